/** Printing: the browser's own dialog, with a title that makes a good file name. */

export function printPage(title: string, page: Window = window): void {
  const before = page.document.title;
  page.addEventListener(
    'afterprint',
    () => {
      page.document.title = before;
    },
    { once: true },
  );
  page.document.title = title;
  page.print();
}

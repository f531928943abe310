/** print: the sheet's layout and print styles. */

export { SheetPage, type SheetPageProps } from './sheet-page';

/** print: the sheet's layout and print styles. */

export { Qr } from './qr';
export { SheetPage, type SheetPageProps } from './sheet-page';

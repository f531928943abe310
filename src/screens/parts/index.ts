/** parts: what every place is made of. Knows no place and no job. */

export { ActionBar, type ActionBarProps, type BarAction } from './action-bar';
export { Button, type ButtonProps } from './button';
export { classes } from './classes';
export { Dialog, type DialogProps } from './dialog';
export { Facts, type FactsProps } from './facts';
export {
  Checks,
  type ChecksProps,
  Choice,
  type ChoiceProps,
  type Option,
  Pick,
  type PickProps,
  TextField,
  type TextFieldProps,
} from './field';
export { FilePicker, type FilePickerProps } from './file-picker';
export { Notice, type NoticeProps } from './notice';
export { NumberPad, type NumberPadProps } from './number-pad';
export { Page, type PageProps } from './page';
export { PinPad, type PinPadProps, pinLength } from './pin-pad';
export { Problem } from './problem';
export { Empty, Working } from './waiting';

/** Why something could not be done, where it was asked for; nothing while there is no reason. */

import { Notice } from './notice';

export function Problem({ children }: { readonly children: string | undefined }) {
  if (children === undefined) return null;
  return (
    <Notice as="alert">
      <p>{children}</p>
    </Notice>
  );
}

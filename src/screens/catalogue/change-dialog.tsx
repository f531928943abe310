/** The frame of every change: what it is, why it is made, how far it is tried, and what speaks against it. */

import type { ReactNode } from 'react';
import type { ShopChange } from '../../engine/plan';
import { words } from '../../words';
import { catalogueWords } from '../../words/catalogue';
import { Button, Dialog, Problem, TextField, Working } from '../parts';
import type { ShownCatalogue } from './use-catalogue';
import { type Change, useChange } from './use-change';

export interface ChangeDialogProps {
  readonly shown: ShownCatalogue;
  readonly title: string;
  readonly children?: ReactNode;
  /** Nothing when what was typed cannot be kept as it is; the fields then say so. */
  readonly changes: () => readonly ShopChange[] | undefined;
  readonly onClose: () => void;
  readonly onKept: (version: number) => void;
}

export function ChangeDialog(props: ChangeDialogProps) {
  const { shown, title, children, changes, onClose, onKept } = props;
  const change = useChange(shown.names);
  const keep = async () => {
    const made = changes();
    const version = made && (await change.make(made));
    if (version !== undefined) onKept(version);
  };
  return (
    <Dialog
      wide
      title={title}
      closeLabel={words.app.cancel}
      onClose={onClose}
      actions={
        <Button
          tone="solid"
          busy={change.isBusy}
          detail={catalogueWords.form.saveDetail}
          onPress={() => void keep()}
        >
          {catalogueWords.form.save}
        </Button>
      }
    >
      {children}
      <ReasonField change={change} />
    </Dialog>
  );
}

/** Why, how far, and why not. */
export function ReasonField({ change }: { readonly change: Change }) {
  const { reason, setReason, tried, problem } = change;
  return (
    <>
      <TextField
        label={catalogueWords.form.reason}
        hint={catalogueWords.form.reasonHint}
        value={reason}
        onChange={setReason}
        maxLength={400}
        autoCapitalize="sentences"
      />
      {tried !== undefined && <Working>{catalogueWords.form.trying(...tried)}</Working>}
      <Problem>{problem}</Problem>
    </>
  );
}

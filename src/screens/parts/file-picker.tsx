/** A button that opens the browser's own file picker. */

import { useRef } from 'react';
import { Button } from './button';

export interface FilePickerProps {
  readonly children: string;
  /** As the `accept` of a file input. */
  readonly accept?: string;
  readonly tone?: 'solid' | 'plain';
  readonly busy?: boolean;
  readonly onPick: (file: File) => void;
}

export function FilePicker({ children, accept, tone = 'plain', busy, onPick }: FilePickerProps) {
  const input = useRef<HTMLInputElement>(null);
  const picked = (file: File | undefined) => {
    if (file !== undefined) onPick(file);
    // Else the same file could not be picked twice.
    if (input.current !== null) input.current.value = '';
  };
  return (
    <>
      <Button tone={tone} busy={busy ?? false} onPress={() => input.current?.click()}>
        {children}
      </Button>
      <input
        ref={input}
        type="file"
        accept={accept}
        hidden
        aria-label={children}
        onChange={(event) => picked(event.target.files?.[0])}
      />
    </>
  );
}

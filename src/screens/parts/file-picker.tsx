/** A button that opens the browser's own file picker. */

import { useRef } from 'react';
import { Button } from './button';

export interface FilePickerProps {
  readonly children: string;
  /** As the `accept` of a file input. */
  readonly accept?: string;
  /** Straight from the camera, where the device has one. */
  readonly capture?: boolean;
  readonly tone?: 'solid' | 'plain';
  readonly busy?: boolean;
  readonly onPick: (file: File) => void;
}

export function FilePicker(props: FilePickerProps) {
  const { children, accept, capture = false, tone = 'plain', busy, onPick } = props;
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
        capture={capture ? 'environment' : undefined}
        hidden
        aria-label={children}
        onChange={(event) => picked(event.target.files?.[0])}
      />
    </>
  );
}

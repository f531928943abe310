/** Where the customer signs with a finger or a pen; kept as vector strokes. */

import { useEffect, useRef } from 'react';
import Pad from 'signature_pad';
import { words } from '../../words';
import { Button } from '../parts';
import styles from './hand-over.module.css';

export function SignaturePad({ onStrokes }: { readonly onStrokes: (svg: string) => void }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const pad = useRef<Pad>(undefined);
  useEffect(() => {
    const element = canvas.current;
    if (element === null) return;
    const scale = Math.max(window.devicePixelRatio, 1);
    element.width = element.offsetWidth * scale;
    element.height = element.offsetHeight * scale;
    element.getContext('2d')?.scale(scale, scale);
    const made = new Pad(element, { penColor: '#000', minWidth: 0.8, maxWidth: 2.4 });
    const keep = () => onStrokes(made.isEmpty() ? '' : made.toSVG());
    made.addEventListener('endStroke', keep);
    pad.current = made;
    return () => {
      made.removeEventListener('endStroke', keep);
      made.off();
    };
  }, [onStrokes]);
  return (
    <div className={styles.sign}>
      <p className={styles.label}>{words.handOver.sign}</p>
      <canvas ref={canvas} className={styles.pad} aria-label={words.handOver.sign} role="img" />
      <div className={styles.under}>
        <span>{words.handOver.signHint}</span>
        <Button
          tone="quiet"
          onPress={() => {
            pad.current?.clear();
            onStrokes('');
          }}
        >
          {words.handOver.clear}
        </Button>
      </div>
    </div>
  );
}

/** Every figure known for a joint, side by side in order of trust: where each comes from, what contradicts, one tap each. */

import { useStore } from 'zustand';
import type { PlanStep } from '../../engine/plan';
import { type ComparedFigure, compareFigures, type Figure } from '../../engine/torque';
import { writeTorqueMarking } from '../../engine/units';
import { type Names, words } from '../../words';
import { jointWords } from '../../words/joint';
import { useApp, useHands, useNames } from '../app-context';
import { Button } from '../parts';
import type { ShownJob } from '../use-job';
import styles from './joint-aside.module.css';
import { figuresKnownHere, type KnownHere } from './known-figures-of-joint';

export interface FigureSourcesProps {
  readonly shown: ShownJob;
  readonly step: PlanStep;
  readonly onUse: (figure: Figure) => void;
}

export function FigureSources({ shown: { open }, step, onUse }: FigureSourcesProps) {
  const book = useStore(useApp().figures, ({ rows }) => rows);
  const names = useNames(open.state.plan);
  const { joint } = step;
  if (joint === undefined || open.state.steps[step.id]?.standing === 'done') return null;
  const { compared, contradicted } = compareFigures(figuresKnownHere(open, joint, book));
  const text = jointWords.figures;
  return (
    <details className={styles.aside}>
      <summary>{contradicted ? text.titleContradicted : text.title(compared.length)}</summary>
      <ol className={styles.sources}>
        {compared.map((one) => (
          <li key={JSON.stringify(one.figure)} className={styles.source}>
            <div>
              <p className={styles.value}>{writeTorqueMarking(one.figure)}</p>
              <p>{originOf(one.figure, joint.source, names)}</p>
              <p className={one.standing === 'contradicts' ? styles.contradicts : styles.soft}>
                {standingOf(one)}
              </p>
            </div>
            <UseButton compared={one} onUse={onUse} />
          </li>
        ))}
      </ol>
      <p className={styles.soft}>{text.order}</p>
    </details>
  );
}

interface UseButtonProps {
  readonly compared: ComparedFigure<KnownHere>;
  readonly onUse: (figure: Figure) => void;
}

/** A usual range is accepted by whoever taps, in their own name. */
function UseButton({ compared: { figure, standing }, onUse }: UseButtonProps) {
  const hands = useHands();
  const { min, max, target, source, isInUse } = figure;
  if (isInUse || standing === 'makes no sense') return null;
  const limits = { ...(min && { min }), ...(max && { max }), ...(target && { target }) };
  const value = writeTorqueMarking(limits);
  const text = jointWords.figures;
  if (source.kind !== 'usual')
    return (
      <Button onPress={() => onUse({ ...limits, source })}>
        {source.kind === 'part' ? text.partSays(value) : text.take(value)}
      </Button>
    );
  return (
    <Button
      disabled={hands === undefined}
      onPress={() => hands && onUse({ ...limits, source: { kind: 'usual', acceptedBy: hands.id } })}
    >
      {text.inMyName(value)}
    </Button>
  );
}

function originOf({ source, from, entered }: KnownHere, usualSource: string, names: Names): string {
  const text = jointWords.figures;
  const said =
    source.kind === 'approved'
      ? text.approved(names.person(source.by), words.date(source.on))
      : words.source(source, names);
  if (entered !== undefined)
    return text.entered(said, names.person(entered.by), words.date(entered.at));
  if (from === 'usual') return text.usual(usualSource);
  return source.kind === 'part' ? text.otherBike : text.model(said);
}

function standingOf({ figure, standing, usable }: ComparedFigure<KnownHere>): string {
  const text = jointWords.figures;
  const towards = standing === 'agrees' && !usable ? text.agreesUsual : text.standings[standing];
  return figure.isInUse ? text.inUse(towards) : towards;
}

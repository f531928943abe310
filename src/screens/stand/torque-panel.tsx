/** The number to set, the largest thing on the screen, and the order of the bolts beside it. */

import { BoltOrder } from '../../drawing';
import { isFarFromUsual, layoutOf } from '../../engine/job';
import type { PlanStep } from '../../engine/plan';
import type { Figure } from '../../engine/torque';
import { words } from '../../words';
import { useNames } from '../app-context';
import { Button, Notice } from '../parts';
import { FigureDialog } from './figure-dialog';
import { ReadingNote } from './reading-note';
import styles from './torque-panel.module.css';
import type { Tightening } from './use-tightening';
import { WrenchDialog } from './wrench-dialog';

export interface TorquePanelProps {
  readonly step: PlanStep;
  readonly tightening: Tightening;
}

export function TorquePanel({ step, tightening }: TorquePanelProps) {
  const { next, wrench, show, unread } = tightening;
  const names = useNames(tightening.shown.open.state.plan);
  const layout = layoutOf(step);
  if (step.joint === undefined || layout === undefined || isDone(tightening, step)) return null;
  if (next === undefined) return <ReadThePart step={step} tightening={tightening} />;
  return (
    <section className={styles.panel}>
      <div className={styles.number}>
        {wrench?.plan === undefined ? (
          <Notice as="alert">
            <p>{wrench?.refusal ? words.refusal(wrench.refusal, names) : words.torque.noWrench}</p>
          </Notice>
        ) : (
          <>
            <p className={styles.value}>
              {scaleText(wrench.plan.onScale, wrench.wrench.increment)}
              <span className={styles.unit}> {wrench.plan.unit}</span>
            </p>
            <p className={styles.explained}>
              <span className={unread === undefined ? styles.figure : styles.unread}>
                {unread === undefined
                  ? `${words.stand.figure} ${tightening.figureText}.`
                  : words.torque.lastTime(printedOn(unread))}
              </span>{' '}
              {isFarFromUsual(step, next.figure) && (
                <span className={styles.unread}>
                  {words.torque.farAsSet(`${words.writing.range(step.joint.usual)} N·m`)}{' '}
                </span>
              )}
              {words.torque.setTo(
                wrench.wrench.id,
                scaleText(wrench.plan.onScale, wrench.wrench.increment),
              )}{' '}
              {tightening.adapter !== undefined &&
                `${words.torque.held(tightening.adapter.name, tightening.adapter.angle)} `}
              {passText(tightening)}
              {'; '}
              {next.pass.kind === 'rising' && next.pass.about !== undefined
                ? words.torque.halfway(words.writing.figure(next.pass.about))
                : next.pass.kind === 'last round'
                  ? words.torque.lastRound
                  : words.torque.ends(
                      words.writing.figure(wrench.plan.jointLow),
                      words.writing.figure(wrench.plan.jointHigh),
                    )}
              .
            </p>
          </>
        )}
      </div>
      <div className={styles.bolts}>
        <BoltOrder
          layout={layout}
          order={next.pass.order}
          pass={next.pass.pass}
          hand={step.joint.hand}
          title={words.stand.bolts}
        />
      </div>
      <ReadingNote readings={tightening.readings} />
      <div className={styles.change}>
        <Button tone="quiet" onPress={() => show('wrench')}>
          {words.torque.change}
        </Button>
        <Button tone="quiet" onPress={() => show('figure')}>
          {unread === undefined ? words.torque.changeFigure : words.torque.saysElse}
        </Button>
      </div>
    </section>
  );
}

/** Nobody has read this part yet: what such parts say is one tap, everything else the pad. */
function ReadThePart({ step, tightening }: TorquePanelProps) {
  const { printed, enter, show } = tightening;
  const likely = printed.filter((figure) => !isFarFromUsual(step, figure)).slice(0, mostOffered);
  return (
    <section className={styles.panel} aria-labelledby={readId}>
      <h2 id={readId} className={styles.ask}>
        {words.torque.enterTitle}
      </h2>
      <p className={styles.explained}>
        {likely.length > 0 ? words.torque.pickPrinted : words.torque.readPart}
      </p>
      <div className={styles.picks}>
        {likely.map((figure) => (
          <Button key={printedOn(figure)} onPress={() => void enter(figure)}>
            {printedOn(figure)}
          </Button>
        ))}
        <Button tone="quiet" onPress={() => show('figure')}>
          {likely.length > 0 ? words.torque.somethingElse : words.torque.nothingPrinted}
        </Button>
      </div>
    </section>
  );
}

const readId = 'read-the-part';
const mostOffered = 5;

function printedOn({ source }: Figure): string {
  return source.kind === 'part' ? source.printed : '';
}

function isDone({ shown }: Tightening, step: PlanStep): boolean {
  return shown.open.state.steps[step.id]?.standing === 'done';
}

function passText({ next, isStale }: Tightening): string {
  if (next === undefined) return '';
  if (isStale && next.pass.pass === next.of) return words.torque.staleRound;
  if (next.of === 1) return words.torque.onlyPass;
  const { numbered } = words.writing;
  return next.pass.pass === next.of
    ? words.torque.lastOf(numbered(next.of))
    : words.torque.passOf(numbered(next.pass.pass), numbered(next.of));
}

/** As many decimals as the scale itself has. */
function scaleText(value: number, increment: number): string {
  const decimals = String(increment).split('.')[1]?.length ?? 0;
  return value.toFixed(Math.min(decimals, 2));
}

export function TorqueDialogs({
  step,
  tightening,
  onBoard,
}: TorquePanelProps & { readonly onBoard: () => void }) {
  if (tightening.dialog === 'figure') return <FigureDialog step={step} tightening={tightening} />;
  if (tightening.dialog === 'wrench')
    return <WrenchDialog tightening={tightening} onBoard={onBoard} />;
  return null;
}

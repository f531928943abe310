/** One step taught whole: where it is, how and why, the reasons behind its place in the order, and where its number comes from. */

import type { ReactNode } from 'react';
import { BikeDrawing, BoltOrder } from '../drawing';
import type { Bike } from '../engine/bike';
import type { OrderedStep, PlanJoint, PlanStep, ReasonsForOrder } from '../engine/plan';
import { tighteningOrder } from '../engine/torque';
import { words } from '../words';
import { catalogueWords } from '../words/catalogue';
import styles from './apprentice-view.module.css';
import { Dialog, Facts, Notice } from './parts';

type TitledStep = OrderedStep & { readonly title: string };

export interface TaughtStep extends Omit<PlanStep, 'measures'> {
  readonly measures: readonly { readonly name: string; readonly source: string }[];
}

export interface ApprenticeViewProps {
  readonly step: TaughtStep;
  /** Its neighbours: those of the job's plan, or of the whole catalogue. */
  readonly reasons: ReasonsForOrder<TitledStep>;
  /** The bike on the stand, or one that has this step. */
  readonly bike?: Bike | undefined;
  /** The figures known for its joint, each with its source in words, the most trusted first. */
  readonly figures?: readonly string[];
}

export function ApprenticeDialog({
  onClose,
  ...view
}: ApprenticeViewProps & { readonly onClose: () => void }) {
  return (
    <Dialog wide title={view.step.title} closeLabel={words.app.close} onClose={onClose}>
      <ApprenticeView {...view} />
    </Dialog>
  );
}

export function ApprenticeView({ step, reasons, bike, figures = [] }: ApprenticeViewProps) {
  const text = catalogueWords.apprentice;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a text without a control is scrolled by keys only when it can be focused
    <div className={styles.view} tabIndex={0}>
      <div className={styles.column}>
        {bike !== undefined && <Where step={step} bike={bike} />}
        <Order reasons={reasons} />
      </div>
      <div className={styles.column}>
        <p className={styles.how}>{step.how}</p>
        {step.cautions.map((caution) => (
          <Notice key={caution}>
            <p>{caution}</p>
          </Notice>
        ))}
        <Facts facts={factsOf(step)} />
        <section className={styles.section}>
          <h3>{text.number}</h3>
          {step.joint === undefined && step.measures.length === 0 && <p>{text.noNumber}</p>}
          {step.joint !== undefined && <Figure joint={step.joint} figures={figures} />}
          <ul className={styles.list}>
            {step.measures.map(({ name, source }) => (
              <li key={name}>{text.measure(name, source)}</li>
            ))}
          </ul>
        </section>
      </div>
    </div>
  );
}

function Where({ step, bike }: { readonly step: TaughtStep; readonly bike: Bike }) {
  const where = catalogueWords.apprentice.place(
    step.place.replaceAll('-', ' '),
    catalogueWords.bikeText(bike, []),
  );
  return (
    <figure className={styles.drawing}>
      <BikeDrawing
        bike={bike}
        lit={{ place: step.place, ...(step.side && { side: step.side }) }}
        title={where}
      />
      <figcaption className={styles.soft}>{where}</figcaption>
    </figure>
  );
}

function factsOf({ why, right, wrong, wayRound, tools, preparation }: TaughtStep) {
  const text = catalogueWords.step;
  const rows: readonly (readonly [string, string | undefined])[] = [
    [text.why, why],
    [text.right, right],
    [text.wrong, wrong],
    [text.wayRound, wayRound],
    [text.tools, tools.length > 0 ? tools.join(', ') : undefined],
    [
      preparation ? words.terms.preparations[preparation.kind] : text.preparation,
      preparation?.note,
    ],
  ];
  return rows.flatMap(([label, value]) => (value === undefined ? [] : [{ label, value }]));
}

function Order({ reasons }: { readonly reasons: ReasonsForOrder<TitledStep> }) {
  const text = catalogueWords.apprentice;
  const { after, reliesOn, before, heldUp } = reasons;
  return (
    <section className={styles.section}>
      <h3>{text.order}</h3>
      {after.length + reliesOn.length === 0 && <p>{text.afterNothing}</p>}
      <Steps title={text.after} steps={after} />
      <Steps title={text.relies} steps={reliesOn}>
        {text.reliesText}
      </Steps>
      <Steps title={text.before} steps={before} />
      {heldUp.length === 0 ? (
        <p>{text.nothingLeans}</p>
      ) : (
        <Steps title={text.heldUp} steps={heldUp}>
          {text.heldUpText}
        </Steps>
      )}
    </section>
  );
}

function Steps({
  title,
  steps,
  children,
}: {
  readonly title: string;
  readonly steps: readonly TitledStep[];
  readonly children?: ReactNode;
}) {
  if (steps.length === 0) return null;
  return (
    <div>
      <p className={styles.bold}>{title}</p>
      <ul className={styles.list}>
        {steps.map(({ id, title: name }) => (
          <li key={id}>{name}</li>
        ))}
      </ul>
      {children !== undefined && <p className={styles.soft}>{children}</p>}
    </div>
  );
}

function Figure({
  joint,
  figures,
}: {
  readonly joint: PlanJoint;
  readonly figures: readonly string[];
}) {
  const text = catalogueWords.apprentice;
  const layout = { shape: joint.layout, bolts: joint.bolts };
  return (
    <>
      <p>{text.onPart}</p>
      <ul className={styles.list}>
        {figures.map((figure) => (
          <li key={figure}>{figure}</li>
        ))}
      </ul>
      <p>{text.usual(words.writing.range(joint.usual), joint.source)}</p>
      {joint.bolts > 1 && (
        <div className={styles.bolts}>
          <BoltOrder
            layout={layout}
            order={tighteningOrder(layout)}
            pass={1}
            hand={joint.hand}
            title={text.bolts}
          />
        </div>
      )}
    </>
  );
}

/** One step whole: its words, its joint and figures, whom it is for, and what a supervisor may change about it. */

import { useEffect, useState } from 'react';
import { Link, useLocation } from 'wouter';
import type { Bike } from '../../engine/bike';
import { factsOf } from '../../engine/bike';
import { holds, reasonsForOrder, type Step } from '../../engine/plan';
import { words } from '../../words';
import { catalogueWords } from '../../words/catalogue';
import { useApp } from '../app-context';
import { ApprenticeDialog, type TaughtStep } from '../apprentice-view';
import { Button, Facts, Notice, Page } from '../parts';
import { routes } from '../routes';
import styles from './catalogue.module.css';
import { EffortDialog, SwitchDialog, WordsDialog } from './change-dialogs';
import { FigureDialog } from './figure-dialog';
import { factsOfStep } from './step-facts';
import { bornWhen, marksOf } from './step-list';
import type { ShownCatalogue } from './use-catalogue';

const changeDialogs = {
  words: WordsDialog,
  effort: EffortDialog,
  switch: SwitchDialog,
  figure: FigureDialog,
} as const;

export interface StepPageProps {
  readonly shown: ShownCatalogue;
  readonly id: string;
  readonly isSupervisor: boolean;
}

export function StepPage({ shown, id, isSupervisor }: StepPageProps) {
  const [, go] = useLocation();
  const [changing, change] = useState<keyof typeof changeDialogs>();
  const [isTeaching, teach] = useState(false);
  const [kept, setKept] = useState<number>();
  const step = shown.now.catalogue.steps.find((one) => one.id === id);
  const back = (
    <Link className={styles.link} href={routes.catalogue}>
      {catalogueWords.back}
    </Link>
  );
  if (step === undefined)
    return (
      <Page title={catalogueWords.title} beside={back}>
        <p>{catalogueWords.notThere}</p>
      </Page>
    );
  const isOff = shown.now.off.includes(id);
  const ask = (what: keyof typeof changeDialogs) => () => {
    setKept(undefined);
    change(what);
  };
  const Changing = changing === undefined ? undefined : changeDialogs[changing];
  return (
    <Page title={step.title} beside={back}>
      <p className={styles.soft}>
        {[words.terms.zoneNames[step.zone], ...marksOf(id, shown)].join(' · ')}
      </p>
      {kept !== undefined && (
        <Notice as="status">
          <p>{catalogueWords.form.kept(kept)}</p>
        </Notice>
      )}
      <p className={styles.how}>{step.how}</p>
      {step.cautions.map((caution) => (
        <Notice key={caution}>
          <p>{caution}</p>
        </Notice>
      ))}
      <div className={styles.buttons}>
        <Button onPress={() => teach(true)}>{catalogueWords.apprentice.open}</Button>
        {isSupervisor && (
          <>
            <Button onPress={ask('words')}>{catalogueWords.change.words}</Button>
            <Button onPress={ask('effort')}>{catalogueWords.change.effort}</Button>
            {step.joint !== undefined && (
              <Button onPress={ask('figure')}>{catalogueWords.change.figure}</Button>
            )}
            {shown.now.own.includes(id) && (
              <Button onPress={() => go(routes.catalogueOwn(id))}>
                {catalogueWords.change.again}
              </Button>
            )}
            <Button onPress={ask('switch')}>
              {isOff ? catalogueWords.change.on : catalogueWords.change.off}
            </Button>
          </>
        )}
      </div>
      <Facts facts={factsOfStep(step, shown)} />
      {Changing !== undefined && (
        <Changing
          shown={shown}
          step={step}
          onClose={() => change(undefined)}
          onKept={(version) => {
            change(undefined);
            setKept(version);
          }}
        />
      )}
      {isTeaching && <Lesson shown={shown} step={step} onClose={() => teach(false)} />}
    </Page>
  );
}

/** Drawn on the first of the unlike bikes that has this step. */
function Lesson({
  shown,
  step,
  onClose,
}: {
  readonly shown: ShownCatalogue;
  readonly step: Step;
  readonly onClose: () => void;
}) {
  const app = useApp();
  const [bike, setBike] = useState<Bike>();
  const when = bornWhen(step, shown);
  useEffect(() => {
    void app
      .loadBikesToTry()
      .then((bikes) => setBike(bikes.find((one) => holds(when, factsOf(one)))));
  }, [app, when]);
  const facts = factsOfStep(step, shown);
  const figures = facts.filter(({ label }) => label === catalogueWords.step.figures);
  return (
    <ApprenticeDialog
      step={taught(step, shown)}
      reasons={reasonsForOrder(shown.now.catalogue.steps, step.id)}
      bike={bike}
      figures={figures.map(({ value }) => value)}
      onClose={onClose}
    />
  );
}

function taught(
  { joint: id, measures, when: _, ...step }: Step,
  shown: ShownCatalogue,
): TaughtStep {
  const joint = shown.now.catalogue.joints.find((one) => one.id === id);
  const { variants: __, clamps: ___, ...plain } = joint ?? {};
  return {
    ...step,
    ...(joint && { joint: plain as NonNullable<TaughtStep['joint']> }), // a joint without its variants is a plan's
    measures: measures.map(({ name, limit }) => ({
      name,
      source: 'rule' in limit ? catalogueWords.step.workedOut : limit.source,
    })),
  };
}

/** All steps by zone, found by their words. */

import { useMemo, useState } from 'react';
import { Link } from 'wouter';
import { type Zone, zones } from '../../engine/base';
import type { Step } from '../../engine/plan';
import { words } from '../../words';
import { catalogueWords } from '../../words/catalogue';
import { Empty, Pick, TextField } from '../parts';
import { routes } from '../routes';
import styles from './catalogue.module.css';
import { hasAllWords, textOfStep } from './search-steps';
import type { ShownCatalogue } from './use-catalogue';

/** Kept while the app is open: whoever comes back from a step finds the list as it was left. */
const left: { text: string; zone: Zone | 'all' } = { text: '', zone: 'all' };

export function StepList({ shown }: { readonly shown: ShownCatalogue }) {
  const { steps, joints } = shown.now.catalogue;
  const [text, setText] = useState(left.text);
  const [zone, setZone] = useState<Zone | 'all'>(left.zone);
  Object.assign(left, { text, zone });
  const texts = useMemo(() => {
    const jointById = new Map(joints.map((joint) => [joint.id, joint]));
    return new Map(
      steps.map((step) => [step.id, textOfStep(step, jointById.get(step.joint ?? ''))]),
    );
  }, [steps, joints]);
  const found = steps.filter(
    (step) => (zone === 'all' || step.zone === zone) && hasAllWords(texts.get(step.id) ?? '', text),
  );
  return (
    <>
      <div className={styles.search}>
        <TextField
          label={catalogueWords.search}
          hint={catalogueWords.searchHint}
          type="search"
          value={text}
          onChange={setText}
          autoCapitalize="off"
        />
        <Pick
          label={catalogueWords.zone}
          value={zone}
          onChange={setZone}
          options={[
            { value: 'all', label: catalogueWords.allZones },
            ...zones.map((value) => ({ value, label: words.terms.zoneNames[value] })),
          ]}
        />
      </div>
      <p role="status" className={styles.soft}>
        {catalogueWords.found(found.length)}
      </p>
      {found.length === 0 && <Empty>{catalogueWords.none}</Empty>}
      {zones.map((one) => (
        <ZoneSteps
          key={one}
          zone={one}
          steps={found.filter((step) => step.zone === one)}
          shown={shown}
        />
      ))}
    </>
  );
}

function ZoneSteps({
  zone,
  steps,
  shown,
}: {
  readonly zone: Zone;
  readonly steps: readonly Step[];
  readonly shown: ShownCatalogue;
}) {
  if (steps.length === 0) return null;
  return (
    <section className={styles.section}>
      <h2>{words.terms.zoneNames[zone]}</h2>
      <ul className={styles.rows}>
        {steps.map((step) => (
          <li key={step.id}>
            <Link href={routes.catalogueStep(step.id)} className={styles.row}>
              <span className={styles.bold}>{step.title}</span>
              <span className={styles.soft}>
                {catalogueWords.conditionText(bornWhen(step, shown))}
              </span>
              <span className={styles.mark}>{marksOf(step.id, shown).join(', ')}</span>
            </Link>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** For whom a step is, also while it is switched off. */
export function bornWhen(step: Step, { now, names }: ShownCatalogue): Step['when'] {
  return now.off.includes(step.id) ? names.conditionOf(step.id) : step.when;
}

export function marksOf(id: string, { now, born }: ShownCatalogue): readonly string[] {
  if (now.off.includes(id)) return [catalogueWords.off];
  if (now.own.includes(id)) return [catalogueWords.own];
  const [is, was] = [now, born].map(({ catalogue }) =>
    catalogue.steps.find((one) => one.id === id),
  );
  const isChanged = (
    ['title', 'how', 'why', 'right', 'wrong', 'wayRound', 'cautions', 'effort'] as const
  ).some((name) => JSON.stringify(is?.[name]) !== JSON.stringify(was?.[name]));
  return isChanged ? [catalogueWords.changed] : [];
}

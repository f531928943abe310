/** A calibration is entered: the certificate, its test points, what they say at once, and how the wrench goes on. */

import { useState } from 'react';
import { useLocation } from 'wouter';
import { type WrenchTool, yearAfter } from '../../state';
import { words } from '../../words';
import { useApp } from '../app-context';
import { SomebodyFirst } from '../hands';
import { ActionBar, Button, Checks, Choice, Notice, Page, TextField } from '../parts';
import { routes } from '../routes';
import styles from './calibration.module.css';
import { judged as judge, proposedPoints, type Way } from './calibration-draft';
import { CalibrationPoints } from './calibration-points';
import { CalibrationVerdict } from './calibration-verdict';
import { WithWrench } from './wrench-page';

export function CalibrationPage({ id }: { readonly id: string }) {
  return <WithWrench id={id}>{(tool) => <CalibrationOf key={id} tool={tool} />}</WithWrench>;
}

type GoesOn = 'as-it-is' | 'adjusted' | 'away' | 'retired';

function CalibrationOf({ tool }: { readonly tool: WrenchTool }) {
  const app = useApp();
  const [, go] = useLocation();
  const { wrench } = tool;
  const { calibration } = words;
  const [on, setOn] = useState(app.clock.today());
  const [dueOn, setDue] = useState(yearAfter(app.clock.today()));
  const [reference, setReference] = useState('');
  const [gives, setGives] = useState<'points' | 'passed'>('points');
  const [way, setWay] = useState<Way>('true');
  const [extras, setExtras] = useState<readonly 'uncertainty'[]>([]);
  const [found, setFound] = useState(() => proposedPoints(wrench));
  const [left, setLeft] = useState(() => proposedPoints(wrench));
  const [chosen, choose] = useState<GoesOn>();
  const [how, setHow] = useState('');
  const [problem, setProblem] = useState<string>();

  const asFound = gives === 'points' ? judge(wrench, found, way) : undefined;
  const isOutside = asFound?.result?.within === false;
  const goesOn = chosen === 'as-it-is' && isOutside ? undefined : chosen;
  const asLeft = goesOn === 'adjusted' ? judge(wrench, left, way) : undefined;
  const pointsProps = { wrench, way, withUncertainty: extras.includes('uncertainty') };

  const save = async () => {
    if (asFound?.isComplete === false || asLeft?.isComplete === false)
      return setProblem(calibration.incomplete);
    if (goesOn === undefined) return setProblem(calibration.choose);
    const kept = await app.calibrate({
      wrench: wrench.id,
      on,
      dueOn,
      ...(reference.trim() !== '' && { reference: reference.trim() }),
      found: asFound?.points ?? [],
      ...(asLeft && { adjusted: { how, points: asLeft.points } }),
      ...((goesOn === 'away' || goesOn === 'retired') && { outOfService: goesOn }),
    });
    if (!kept.ok) return setProblem(words.refusal({ ...kept.refusal }));
    go(routes.wrench(wrench.id));
  };

  return (
    <Page
      title={calibration.title(wrench.id)}
      bar={
        <ActionBar
          aside={[{ label: words.app.cancel, onPress: () => go(routes.wrench(wrench.id)) }]}
          action={{
            label: calibration.keep,
            detail: calibration.keepDetail,
            onPress: () => void save(),
          }}
        />
      }
    >
      <SomebodyFirst />
      <section className={styles.section}>
        <h2>{calibration.certificate}</h2>
        <div className={styles.fields}>
          <TextField
            label={calibration.on}
            type="date"
            value={on}
            onChange={(date) => {
              setOn(date);
              if (date !== '') setDue(yearAfter(date));
            }}
          />
          <TextField
            label={calibration.dueOn}
            hint={calibration.dueHint}
            type="date"
            value={dueOn}
            onChange={setDue}
          />
          <TextField
            label={calibration.reference}
            value={reference}
            onChange={setReference}
            maxLength={60}
          />
        </div>
        <Choice
          label={calibration.values}
          value={gives}
          onChange={setGives}
          options={[
            { value: 'points', label: calibration.withPoints },
            {
              value: 'passed',
              label: calibration.passedOnly,
              detail: calibration.passedOnlyDetail,
            },
          ]}
        />
        {gives === 'points' && (
          <>
            <Choice
              label={calibration.way}
              hint={way === 'true' ? calibration.asTrueHint : calibration.asDeviationHint}
              value={way}
              onChange={setWay}
              options={[
                { value: 'true', label: calibration.asTrue },
                { value: 'deviation', label: calibration.asDeviation },
              ]}
            />
            <Checks
              label={words.toolBoard.uncertainty}
              values={extras}
              onChange={setExtras}
              options={[{ value: 'uncertainty', label: calibration.withUncertainty }]}
            />
          </>
        )}
      </section>
      {asFound !== undefined && (
        <>
          <CalibrationPoints
            title={calibration.found}
            {...pointsProps}
            points={found}
            onChange={setFound}
          />
          <CalibrationVerdict judged={asFound} wrench={wrench} />
        </>
      )}
      <Choice
        label={calibration.goesOn}
        value={goesOn}
        onChange={choose}
        options={goingOn(isOutside)}
      />
      {asLeft !== undefined && (
        <>
          <TextField label={calibration.how} value={how} onChange={setHow} maxLength={200} />
          <div className={styles.quick}>
            {calibration.howQuick.map((quick) => (
              <Button key={quick} pressed={how === quick} onPress={() => setHow(quick)}>
                {quick}
              </Button>
            ))}
          </div>
          <CalibrationPoints
            title={calibration.left}
            {...pointsProps}
            points={left}
            onChange={setLeft}
          />
          <CalibrationVerdict judged={asLeft} wrench={wrench} isLeft />
        </>
      )}
      {problem !== undefined && (
        <Notice as="alert">
          <p>{problem}</p>
        </Notice>
      )}
    </Page>
  );
}

/** A wrench that came outside cannot go on as it came. */
function goingOn(isOutside: boolean) {
  const { calibration } = words;
  const all = [
    { value: 'as-it-is', label: calibration.asItIs },
    { value: 'adjusted', label: calibration.adjusted },
    { value: 'away', label: calibration.away },
    { value: 'retired', label: calibration.retired },
  ] as const;
  return all.filter(({ value }) => !isOutside || value !== 'as-it-is');
}

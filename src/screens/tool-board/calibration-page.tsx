/** A calibration is entered: the certificate, its test points, what they say at once, and how the wrench goes on. */

import { useState } from 'react';
import { useLocation } from 'wouter';
import { useStore } from 'zustand';
import type { WrenchTool } from '../../state';
import { words } from '../../words';
import { boardWords } from '../../words/board-words';
import { useApp } from '../app-context';
import { SomebodyFirst } from '../hands';
import { ActionBar, Button, Choice, Page, Problem, TextField, Working } from '../parts';
import { routes } from '../routes';
import styles from './calibration.module.css';
import { judged as judge } from './calibration-draft';
import { type CalibrationForm, draftKey, emptyForm, formFrom, goings } from './calibration-form';
import { CalibrationPoints } from './calibration-points';
import { CalibrationVerdict } from './calibration-verdict';
import { CertificateFields } from './certificate-fields';
import { WithWrench } from './wrench-page';

export function CalibrationPage({ id }: { readonly id: string }) {
  const loaded = useStore(useApp().session, (session) => session.loaded);
  if (!loaded)
    return (
      <Page title={boardWords.calibration.title(id)}>
        <Working>{words.app.opening}</Working>
      </Page>
    );
  return <WithWrench id={id}>{(tool) => <CalibrationOf key={id} tool={tool} />}</WithWrench>;
}

/** Typed at a desk with a telephone ringing: what stands there is kept until it is saved or given up. */
function useForm({ wrench }: WrenchTool) {
  const app = useApp();
  const key = draftKey(wrench.id);
  const draft = useStore(app.session, ({ drafts }) => drafts[key]);
  const form = formFrom(draft, emptyForm(wrench, app.clock.today()));
  const change = (part: Partial<CalibrationForm>) =>
    app.session.getState().draft(key, JSON.stringify({ ...form, ...part }));
  return { form, change, forget: () => app.session.getState().draft(key, '') };
}

function CalibrationOf({ tool }: { readonly tool: WrenchTool }) {
  const app = useApp();
  const [, go] = useLocation();
  const { wrench } = tool;
  const { calibration } = boardWords;
  const { form, change, forget } = useForm(tool);
  const [problem, setProblem] = useState<string>();
  const asFound = form.gives === 'points' ? judge(wrench, form.found, form.way) : undefined;
  const isOutside = asFound?.result?.within === false;
  const goesOn = form.goesOn === 'as-it-is' && isOutside ? undefined : form.goesOn;
  const asLeft = goesOn === 'adjusted' ? judge(wrench, form.left, form.way) : undefined;
  const pointsProps = { wrench, way: form.way, withUncertainty: form.withUncertainty };

  const leave = () => {
    forget();
    go(routes.wrench(wrench.id));
  };
  const save = async () => {
    if (asFound?.isComplete === false || asLeft?.isComplete === false)
      return setProblem(calibration.incomplete);
    if (goesOn === undefined) return setProblem(calibration.choose);
    const { on, dueOn, reference, how } = form;
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
    leave();
  };

  return (
    <Page
      title={calibration.title(wrench.id)}
      bar={
        <ActionBar
          aside={[{ label: words.app.cancel, onPress: leave }]}
          action={{
            label: calibration.keep,
            detail: calibration.keepDetail,
            onPress: () => void save(),
          }}
        />
      }
    >
      <SomebodyFirst />
      <CertificateFields form={form} onChange={change} />
      {asFound !== undefined && (
        <>
          <CalibrationPoints
            title={calibration.found}
            {...pointsProps}
            points={form.found}
            onChange={(found) => change({ found })}
          />
          <CalibrationVerdict judged={asFound} wrench={wrench} />
        </>
      )}
      <Choice
        label={calibration.goesOn}
        value={goesOn}
        onChange={(chosen) => change({ goesOn: chosen })}
        options={goings
          // A wrench that came outside cannot go on as it came.
          .filter((value) => !isOutside || value !== 'as-it-is')
          .map((value) => ({ value, label: calibration.goings[value] }))}
      />
      {asLeft !== undefined && (
        <>
          <WhatWasDone how={form.how} onChange={(how) => change({ how })} />
          <CalibrationPoints
            title={calibration.left}
            {...pointsProps}
            points={form.left}
            onChange={(left) => change({ left })}
          />
          <CalibrationVerdict judged={asLeft} wrench={wrench} isLeft />
        </>
      )}
      <Problem>{problem}</Problem>
    </Page>
  );
}

interface WhatWasDoneProps {
  readonly how: string;
  readonly onChange: (how: string) => void;
}

function WhatWasDone({ how, onChange }: WhatWasDoneProps) {
  const { calibration } = boardWords;
  return (
    <div className={styles.done}>
      <TextField label={calibration.how} value={how} onChange={onChange} maxLength={200} />
      <div className={styles.quick}>
        {calibration.howQuick.map((quick) => (
          <Button key={quick} pressed={how === quick} onPress={() => onChange(quick)}>
            {quick}
          </Button>
        ))}
      </div>
    </div>
  );
}

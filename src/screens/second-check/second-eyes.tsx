/** The second pair of eyes: an apprentice's class A joints, ticked one by one and confirmed with one tap and a PIN. */

import { useState } from 'react';
import { useStore } from 'zustand';
import { isLearner, type JobState, unconfirmedJoints } from '../../engine/job';
import type { Person } from '../../state';
import { peopleLabels, words } from '../../words';
import { useApp, useNames } from '../app-context';
import { Button, Checks, Notice } from '../parts';
import { PinDialog } from '../pin-dialog';
import styles from './second-check.module.css';

export function SecondEyes({ job, state }: { readonly job: string; readonly state: JobState }) {
  const app = useApp();
  const people = useStore(app.people, ({ rows }) => rows);
  const names = useNames(state.plan);
  const [ticked, tick] = useState<readonly string[]>([]);
  const [asking, ask] = useState<Person>();
  const joints = unconfirmedJoints(state);
  const looked = ticked.filter((joint) => joints.includes(joint));
  const eyes = people.filter((person) => mayConfirm(person, joints, state));
  if (joints.length === 0) return null;
  return (
    <section>
      <h2>{peopleLabels.eyes}</h2>
      <p>{peopleLabels.eyesText}</p>
      <Checks
        label={peopleLabels.eyesLooked}
        options={joints.map((joint) => ({ value: joint, label: jointText(joint) }))}
        values={looked}
        onChange={tick}
      />
      {eyes.length === 0 && (
        <Notice>
          <p>{peopleLabels.eyesNobody}</p>
        </Notice>
      )}
      <div className={styles.eyes}>
        {eyes.map((person) => (
          <Button key={person.id} disabled={looked.length === 0} onPress={() => ask(person)}>
            {peopleLabels.eyesBy(person.name)}
          </Button>
        ))}
        {looked.length === 0 && <p>{peopleLabels.eyesTick}</p>}
      </div>
      {asking !== undefined && (
        <PinDialog
          person={asking}
          means={peopleLabels.eyesMeans(looked.length)}
          onClose={() => ask(undefined)}
          onPin={async (pin) => {
            const done = await app.confirmJoints({ job, joints: looked, person: asking.id, pin });
            return done.ok ? undefined : words.refusal({ ...done.refusal }, names);
          }}
        />
      )}
    </section>
  );

  function jointText(joint: string): string {
    const tightened = state.joints[joint]?.tightened;
    if (tightened === undefined) return names.joint(joint);
    const { figure, onScale, wrench, by } = tightened;
    const set = `${words.writing.figure(onScale, 2)} ${wrench.unit}, ${wrench.id}`;
    return `${names.joint(joint)}: ${words.writing.range(figure)} N·m, ${set}, ${names.person(by)}`;
  }
}

/** The engine has the last word; this only keeps buttons away that it would refuse. */
function mayConfirm(
  { id, roles, active }: Person,
  joints: readonly string[],
  state: JobState,
): boolean {
  const isOwn = joints.every((joint) => state.joints[joint]?.tightened?.by === id);
  return active && !isLearner(roles) && !isOwn;
}

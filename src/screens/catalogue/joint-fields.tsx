/** A joint of one's own, with its usual range and where that comes from. */

import { hands, preparations, risks } from '../../engine/plan';
import { words } from '../../words';
import { catalogueWords } from '../../words/catalogue';
import { Choice, Pick, TextField } from '../parts';
import styles from './catalogue.module.css';
import { type JointDraft, neededOfJoint } from './own-step-draft';
import { numberIn } from './typed';

export function JointFields({
  joint,
  onChange,
  isTried,
}: {
  readonly joint: JointDraft;
  readonly onChange: (joint: JointDraft) => void;
  readonly isTried: boolean;
}) {
  const text = catalogueWords.form;
  const set = (part: Partial<JointDraft>) => onChange({ ...joint, ...part });
  const labels = {
    name: text.jointName,
    thread: text.thread,
    bit: text.bit,
    preparationNote: text.prepareNote,
    source: text.source,
  };
  const numbers = { bolts: text.bolts, min: text.usualMin, max: text.usualMax };
  return (
    <>
      <div className={styles.two}>
        {neededOfJoint.map((name) => (
          <TextField
            key={name}
            label={labels[name]}
            value={joint[name]}
            onChange={(value) => set({ [name]: value })}
            maxLength={name === 'source' || name === 'preparationNote' ? 300 : 80}
            error={isTried && joint[name].trim().length < 2 ? text.needed : undefined}
          />
        ))}
        {(['bolts', 'min', 'max'] as const).map((name) => (
          <TextField
            key={name}
            label={numbers[name]}
            value={joint[name]}
            onChange={(value) => set({ [name]: value })}
            inputMode="decimal"
            maxLength={6}
            error={isTried && numberIn(joint[name]) === undefined ? text.number : undefined}
          />
        ))}
        <Pick
          label={text.prepare}
          value={joint.preparation}
          onChange={(preparation) => set({ preparation })}
          options={preparations.map((value) => ({
            value,
            label: words.terms.preparations[value],
          }))}
        />
        <Choice
          label={text.hand}
          value={joint.hand}
          onChange={(hand) => set({ hand })}
          options={hands.map((value) => ({ value, label: catalogueWords.step.hands[value] }))}
        />
      </div>
      <Choice
        label={catalogueWords.step.risk}
        columns="one"
        value={joint.risk}
        onChange={(risk) => set({ risk })}
        options={risks.map((value) => ({ value, label: catalogueWords.step.risks[value] }))}
      />
    </>
  );
}

/** Wheels, brakes, steering, gears, seat, materials and extras: what changes the work. */

import {
  assists,
  axles,
  bars,
  brakes,
  extras,
  forks,
  gearings,
  materials,
  seatClamps,
  stems,
} from '../engine/bike';
import { words } from '../words';
import { BikeDetailFields } from './bike-detail-fields';
import styles from './bike-fields.module.css';
import type { BoxDraft } from './box-answers';
import { Checks, Pick, TextField } from './parts';

export interface BikeFieldsProps {
  readonly draft: BoxDraft;
  readonly onChange: (part: Partial<BoxDraft>) => void;
  readonly wrong: (place: string, sentence?: string) => string | undefined;
}

export function BikeFields({ draft, onChange, wrong }: BikeFieldsProps) {
  const text = words.goodsIn;
  return (
    <>
      <h2>{text.more}</h2>
      <div className={styles.fields}>
        <Answer
          label={`${text.wheel.front}: ${text.axle}`}
          value={draft.frontAxle}
          answers={axles}
          onChange={(frontAxle) => onChange({ frontAxle })}
        />
        <Answer
          label={`${text.wheel.rear}: ${text.axle}`}
          value={draft.rearAxle}
          answers={axles}
          onChange={(rearAxle) => onChange({ rearAxle })}
        />
        <Answer
          label={`${text.wheel.front}: ${text.brake}`}
          value={draft.frontBrake}
          answers={brakes}
          onChange={(frontBrake) => onChange({ frontBrake })}
        />
        <Answer
          label={`${text.wheel.rear}: ${text.brake}`}
          value={draft.rearBrake}
          answers={brakes}
          onChange={(rearBrake) => onChange({ rearBrake })}
        />
        <TextField
          label={`${text.wheel.front}: ${text.tyre}`}
          value={draft.frontTyre}
          onChange={(frontTyre) => onChange({ frontTyre })}
          error={wrong('front.tyre', text.tyreShape)}
          maxLength={40}
        />
        <TextField
          label={`${text.wheel.rear}: ${text.tyre}`}
          value={draft.rearTyre}
          onChange={(rearTyre) => onChange({ rearTyre })}
          error={wrong('rear.tyre', text.tyreShape)}
          maxLength={40}
        />
        <TextField
          label={text.pressure}
          hint={text.pressureHint}
          value={draft.pressure}
          onChange={(pressure) => onChange({ pressure })}
          maxLength={40}
        />
        <Answer
          label={text.fork}
          value={draft.fork}
          answers={forks}
          onChange={(fork) => onChange({ fork })}
        />
        <Answer
          label={text.steering}
          value={draft.stem}
          answers={stems}
          onChange={(stem) => onChange({ stem })}
        />
        <Answer
          label={text.bar}
          value={draft.bar}
          answers={bars}
          onChange={(bar) => onChange({ bar })}
        />
        <Answer
          label={text.assist}
          value={draft.assist}
          answers={assists}
          onChange={(assist) => onChange({ assist })}
        />
        <Answer
          label={text.gears}
          value={draft.gears}
          answers={gearings}
          onChange={(gears) => onChange({ gears })}
        />
        <TextField
          label={text.speeds}
          inputMode="numeric"
          value={draft.speeds}
          onChange={(speeds) => onChange({ speeds })}
          error={wrong('gears.speeds', text.number)}
          maxLength={2}
        />
        <Answer
          label={text.clamp}
          value={draft.clamp}
          answers={seatClamps}
          onChange={(clamp) => onChange({ clamp })}
        />
        <TextField
          label={text.post}
          inputMode="decimal"
          value={draft.post}
          onChange={(post) => onChange({ post })}
          error={wrong('seat.postDiameter', text.number)}
          maxLength={6}
        />
        <TextField
          label={text.loadLimit}
          inputMode="numeric"
          value={draft.loadLimit}
          onChange={(loadLimit) => onChange({ loadLimit })}
          error={wrong('loadLimit', text.number)}
          maxLength={4}
        />
      </div>
      <h2>{text.materials}</h2>
      <div className={styles.fields}>
        <Answer
          label={text.frameMaterial}
          value={draft.frameMaterial}
          answers={materials}
          onChange={(frameMaterial) => onChange({ frameMaterial })}
        />
        <Answer
          label={text.barMaterial}
          value={draft.barMaterial}
          answers={materials}
          onChange={(barMaterial) => onChange({ barMaterial })}
        />
        <Answer
          label={text.postMaterial}
          value={draft.postMaterial}
          answers={materials}
          onChange={(postMaterial) => onChange({ postMaterial })}
        />
        <Answer
          label={text.steererMaterial}
          value={draft.steererMaterial}
          answers={materials}
          onChange={(steererMaterial) => onChange({ steererMaterial })}
        />
      </div>
      <Checks
        label={text.extras}
        options={extras.map((value) => ({ value, label: value.replaceAll('-', ' ') }))}
        values={draft.extras}
        onChange={(chosen) => onChange({ extras: chosen })}
      />
      <BikeDetailFields draft={draft} onChange={onChange} wrong={wrong} />
    </>
  );
}

interface AnswerProps<Value extends string> {
  readonly label: string;
  readonly value: Value;
  readonly answers: readonly Value[];
  readonly onChange: (value: Value) => void;
}

function Answer<Value extends string>({ label, value, answers, onChange }: AnswerProps<Value>) {
  return (
    <Pick
      label={label}
      value={value}
      onChange={onChange}
      options={answers.map((answer) => ({ value: answer, label: answer.replaceAll('-', ' ') }))}
    />
  );
}

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
import { readDraft } from './box-draft';
import { Checks, Pick, TextField } from './parts';

export interface BikeFieldsProps {
  readonly draft: BoxDraft;
  readonly onChange: (part: Partial<BoxDraft>) => void;
  /** The sentence where a field is to be complained of, nothing elsewhere. */
  readonly wrong: (place: string, sentence?: string) => string | undefined;
}

export function BikeFields({ draft, onChange, wrong }: BikeFieldsProps) {
  const text = words.goodsIn;
  const reading = readDraft(draft);
  const fault = (place: string) =>
    reading.ok ? undefined : wrong(place, reading.wrong.get(place));
  return (
    <>
      <h2>{text.more}</h2>
      <div className={styles.fields}>
        <Answer
          label={`${text.wheel.front}: ${text.axle}`}
          value={draft.frontAxle}
          answers={axles}
          onChange={(frontAxle) => onChange({ frontAxle })}
          error={fault('front.axle')}
        />
        <Answer
          label={`${text.wheel.rear}: ${text.axle}`}
          value={draft.rearAxle}
          answers={axles}
          onChange={(rearAxle) => onChange({ rearAxle })}
          error={fault('rear.axle')}
        />
        <Answer
          label={`${text.wheel.front}: ${text.brake}`}
          value={draft.frontBrake}
          answers={brakes}
          onChange={(frontBrake) => onChange({ frontBrake })}
          error={fault('front.brake')}
        />
        <Answer
          label={`${text.wheel.rear}: ${text.brake}`}
          value={draft.rearBrake}
          answers={brakes}
          onChange={(rearBrake) => onChange({ rearBrake })}
          error={fault('rear.brake')}
        />
        <TextField
          label={`${text.wheel.front}: ${text.tyre}`}
          value={draft.frontTyre}
          onChange={(frontTyre) => onChange({ frontTyre })}
          error={fault('front.tyre')}
          maxLength={40}
        />
        <TextField
          label={`${text.wheel.rear}: ${text.tyre}`}
          value={draft.rearTyre}
          onChange={(rearTyre) => onChange({ rearTyre })}
          error={fault('rear.tyre')}
          maxLength={40}
        />
        <TextField
          label={text.pressure}
          hint={text.pressureHint}
          value={draft.pressure}
          onChange={(pressure) => onChange({ pressure })}
          error={fault('front.tyrePressure') ?? fault('rear.tyrePressure')}
          maxLength={40}
        />
        <Answer
          label={text.fork}
          value={draft.fork}
          answers={forks}
          onChange={(fork) => onChange({ fork })}
          error={fault('fork.kind')}
        />
        <Answer
          label={text.steering}
          value={draft.stem}
          answers={stems}
          onChange={(stem) => onChange({ stem })}
          error={fault('steering.stem')}
        />
        <Answer
          label={text.bar}
          value={draft.bar}
          answers={bars}
          onChange={(bar) => onChange({ bar })}
          error={fault('steering.bar')}
        />
        <Answer
          label={text.assist}
          value={draft.assist}
          answers={assists}
          onChange={(assist) => onChange({ assist })}
          error={fault('assist')}
        />
        <Answer
          label={text.gears}
          value={draft.gears}
          answers={gearings}
          onChange={(gears) => onChange({ gears })}
          error={fault('gears.kind')}
        />
        <TextField
          label={text.speeds}
          inputMode="numeric"
          value={draft.speeds}
          onChange={(speeds) => onChange({ speeds })}
          error={fault('gears.speeds')}
          maxLength={2}
        />
        <Answer
          label={text.clamp}
          value={draft.clamp}
          answers={seatClamps}
          onChange={(clamp) => onChange({ clamp })}
          error={fault('seat.clamp')}
        />
        <TextField
          label={text.post}
          inputMode="decimal"
          value={draft.post}
          onChange={(post) => onChange({ post })}
          error={fault('seat.postDiameter')}
          maxLength={6}
        />
        <TextField
          label={text.loadLimit}
          inputMode="numeric"
          value={draft.loadLimit}
          onChange={(loadLimit) => onChange({ loadLimit })}
          error={fault('loadLimit')}
          maxLength={4}
        />
      </div>
      <h2>{text.materials}</h2>
      <p>{text.materialsHint}</p>
      <div className={styles.fields}>
        <Answer
          label={text.frameMaterial}
          value={draft.frameMaterial}
          answers={materials}
          onChange={(frameMaterial) => onChange({ frameMaterial })}
          error={fault('frame.material')}
        />
        <Answer
          label={text.barMaterial}
          value={draft.barMaterial}
          answers={materials}
          onChange={(barMaterial) => onChange({ barMaterial })}
          error={fault('steering.barMaterial')}
        />
        <Answer
          label={text.postMaterial}
          value={draft.postMaterial}
          answers={materials}
          onChange={(postMaterial) => onChange({ postMaterial })}
          error={fault('seat.postMaterial')}
        />
        <Answer
          label={text.steererMaterial}
          value={draft.steererMaterial}
          answers={materials}
          onChange={(steererMaterial) => onChange({ steererMaterial })}
          error={fault('fork.steerer')}
        />
      </div>
      <Checks
        label={text.extras}
        options={extras.map((value) => ({ value, label: text.answerText(value) }))}
        values={draft.extras}
        onChange={(chosen) => onChange({ extras: chosen })}
        error={fault('extras')}
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
  readonly error: string | undefined;
}

function Answer<Value extends string>({ answers, ...rest }: AnswerProps<Value>) {
  return (
    <Pick
      {...rest}
      options={answers.map((answer) => ({
        value: answer,
        label: words.goodsIn.answerText(answer),
      }))}
    />
  );
}

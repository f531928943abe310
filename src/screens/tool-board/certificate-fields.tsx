/** The certificate itself: its dates, its number, and how it gives what was measured. */

import { yearAfter } from '../../state';
import { boardWords } from '../../words/board-words';
import { Checks, Choice, TextField } from '../parts';
import styles from './calibration.module.css';
import type { CalibrationForm } from './calibration-form';

export interface CertificateFieldsProps {
  readonly form: CalibrationForm;
  readonly onChange: (part: Partial<CalibrationForm>) => void;
}

export function CertificateFields({ form, onChange }: CertificateFieldsProps) {
  const { calibration } = boardWords;
  return (
    <section className={styles.section}>
      <h2>{calibration.certificate}</h2>
      <div className={styles.fields}>
        <TextField
          label={calibration.on}
          type="date"
          value={form.on}
          onChange={(on) => onChange({ on, ...(on !== '' && { dueOn: yearAfter(on) }) })}
        />
        <TextField
          label={calibration.dueOn}
          hint={calibration.dueHint}
          type="date"
          value={form.dueOn}
          onChange={(dueOn) => onChange({ dueOn })}
        />
        <TextField
          label={calibration.reference}
          value={form.reference}
          onChange={(reference) => onChange({ reference })}
          maxLength={60}
        />
      </div>
      <Choice
        label={calibration.values}
        value={form.gives}
        onChange={(gives) => onChange({ gives })}
        options={[
          { value: 'points', label: calibration.withPoints },
          {
            value: 'passed',
            label: calibration.passedOnly,
            detail: calibration.passedOnlyDetail,
          },
        ]}
      />
      {form.gives === 'points' && (
        <>
          <Choice
            label={calibration.way}
            hint={form.way === 'true' ? calibration.asTrueHint : calibration.asDeviationHint}
            value={form.way}
            onChange={(way) => onChange({ way })}
            options={[
              { value: 'true', label: calibration.asTrue },
              { value: 'deviation', label: calibration.asDeviation },
            ]}
          />
          <Checks
            label={boardWords.toolBoard.uncertainty}
            values={form.withUncertainty ? ['stated'] : []}
            onChange={(values) => onChange({ withUncertainty: values.length > 0 })}
            options={[{ value: 'stated', label: calibration.withUncertainty }]}
          />
        </>
      )}
    </section>
  );
}

/** The questions that most boxes leave as usual, folded away until somebody asks for them. */

import { words } from '../words';
import { type Detail, details } from './bike-details';
import styles from './bike-fields.module.css';
import type { BoxDraft } from './box-answers';
import { Pick, TextField } from './parts';

export interface BikeDetailFieldsProps {
  readonly draft: BoxDraft;
  readonly onChange: (part: Partial<BoxDraft>) => void;
  readonly wrong: (place: string, sentence?: string) => string | undefined;
}

export function BikeDetailFields({ draft, onChange, wrong }: BikeDetailFieldsProps) {
  const text = words.goodsIn;
  const asked = details.filter(({ isAsked }) => isAsked?.(draft) !== false);
  const isWrong = asked.some(({ place }) => wrong(place) !== undefined);
  const answered = asked.filter(({ place }) => (draft.details[place] ?? '') !== '').length;
  const answer = (place: string, given: string) => {
    const { [place]: _, ...others } = draft.details;
    onChange({ details: given === '' ? others : { ...others, [place]: given } });
  };
  return (
    <details className={styles.more} open={isWrong || undefined}>
      <summary className={styles.summary}>{text.details(answered)}</summary>
      <p>{text.detailsHint}</p>
      <div className={styles.fields}>
        {asked.map((detail) => (
          <DetailField
            key={detail.place}
            detail={detail}
            value={draft.details[detail.place] ?? ''}
            onChange={(given) => answer(detail.place, given)}
            error={wrong(detail.place, text.number)}
          />
        ))}
      </div>
    </details>
  );
}

interface DetailFieldProps {
  readonly detail: Detail;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly error: string | undefined;
}

function DetailField({ detail: { place, answers }, value, onChange, error }: DetailFieldProps) {
  const text = words.goodsIn;
  const label = text.places[place] ?? place;
  if (answers === undefined)
    return (
      <TextField
        label={label}
        inputMode="decimal"
        value={value}
        onChange={onChange}
        error={error}
        maxLength={6}
      />
    );
  return (
    <Pick
      label={label}
      value={value}
      onChange={onChange}
      options={[
        { value: '', label: text.asUsual },
        ...answers.map((answer) => ({ value: answer, label: text.answerText(answer) })),
      ]}
    />
  );
}

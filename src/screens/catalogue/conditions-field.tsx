/** For which bikes: conditions picked from the questions that a description answers. */

import { answersByQuestion } from '../../engine/plan';
import { catalogueWords } from '../../words/catalogue';
import { Checks, Pick } from '../parts';
import styles from './catalogue.module.css';
import type { PickedCondition } from './own-step-draft';

const askable = [...answersByQuestion].filter(([, answers]) => answers.length > 0);

export function ConditionsField({
  conditions,
  onChange,
}: {
  readonly conditions: readonly PickedCondition[];
  readonly onChange: (conditions: readonly PickedCondition[]) => void;
}) {
  const text = catalogueWords.form;
  const open = askable.filter(([question]) => !conditions.some((one) => one.question === question));
  return (
    <section className={styles.section}>
      <h2>{text.forBikes}</h2>
      <p className={styles.soft}>{text.forBikesHint}</p>
      {conditions.map(({ question, answers }) => (
        <Checks
          key={question}
          label={text.answers(catalogueWords.questionName(question))}
          values={answers}
          options={(answersByQuestion.get(question) ?? []).map((answer) => ({
            value: String(answer),
            label: catalogueWords.answerName(answer),
          }))}
          onChange={(values) =>
            onChange(
              conditions.map((one) =>
                one.question === question ? { question, answers: values } : one,
              ),
            )
          }
        />
      ))}
      <Pick
        label={text.question}
        value=""
        prompt={text.forBikes}
        options={open.map(([question]) => ({
          value: question,
          label: catalogueWords.questionName(question),
        }))}
        onChange={(question) => onChange([...conditions, { question, answers: [] }])}
      />
    </section>
  );
}

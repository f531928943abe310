/** A step of the shop's own: written here, or changed again. */

import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import { zones } from '../../engine/base';
import { places } from '../../engine/bike';
import { words } from '../../words';
import { catalogueWords } from '../../words/catalogue';
import { Button, Choice, Page, Pick, TextField } from '../parts';
import { routes } from '../routes';
import styles from './catalogue.module.css';
import { ReasonField } from './change-dialog';
import { EffortFields } from './change-dialogs';
import { ConditionsField } from './conditions-field';
import { JointFields } from './joint-fields';
import { ListField } from './list-field';
import {
  changesIn,
  draftOf,
  emptyDraft,
  emptyJoint,
  neededFields,
  type OwnStepDraft,
  ownId,
} from './own-step-draft';
import { bornWhen } from './step-list';
import type { ShownCatalogue } from './use-catalogue';
import { useChange } from './use-change';

export function OwnStepPage({
  shown,
  id,
}: {
  readonly shown: ShownCatalogue;
  readonly id?: string | undefined;
}) {
  const text = catalogueWords.form;
  const { names, now } = shown;
  const [, go] = useLocation();
  const change = useChange(names);
  const [isTried, setTried] = useState(false);
  const held = now.catalogue.steps.find((step) => step.id === id && now.own.includes(step.id));
  const [draft, setDraft] = useState<OwnStepDraft>(() =>
    held === undefined ? emptyDraft : draftOf(held, pointsThatConfirm(held.id, shown)),
  );
  const set = (part: Partial<OwnStepDraft>) => setDraft({ ...draft, ...part });
  const steps = now.catalogue.steps
    .filter((step) => step.id !== id)
    .map((step) => ({ value: step.id, label: step.title }));
  const keep = async () => {
    setTried(true);
    const taken = [...now.catalogue.steps, ...now.catalogue.joints].map((one) => one.id);
    const own = held?.id ?? ownId(draft.title, (other) => taken.includes(other));
    const changes = changesIn(draft, own, held && { ...held, when: bornWhen(held, shown) });
    if (changes !== undefined && (await change.make(changes)) !== undefined)
      go(routes.catalogueStep(own));
  };
  return (
    <Page
      title={held === undefined ? catalogueWords.addStep : catalogueWords.change.again}
      beside={
        <Link className={styles.link} href={routes.catalogue}>
          {catalogueWords.back}
        </Link>
      }
    >
      <TextField
        label={text.title}
        hint={text.titleHint}
        value={draft.title}
        onChange={(title) => set({ title })}
        maxLength={80}
        autoCapitalize="sentences"
        error={isTried && draft.title.trim().length < 2 ? text.needed : undefined}
      />
      <div className={styles.two}>
        {(['how', 'why', 'right', 'wrong'] as const).map((name) => (
          <TextField
            key={name}
            label={catalogueWords.step[name]}
            lines={3}
            value={draft[name]}
            onChange={(value) => set({ [name]: value })}
            maxLength={600}
            autoCapitalize="sentences"
            error={
              isTried && neededFields.some((one) => one === name) && draft[name].trim().length < 2
                ? text.needed
                : undefined
            }
          />
        ))}
        <TextField
          label={text.tools}
          lines={2}
          value={draft.tools}
          onChange={(tools) => set({ tools })}
        />
        <TextField
          label={catalogueWords.step.cautions}
          lines={2}
          value={draft.cautions}
          onChange={(cautions) => set({ cautions })}
          autoCapitalize="sentences"
        />
        <Pick
          label={catalogueWords.zone}
          value={draft.zone}
          onChange={(zone) => set({ zone })}
          options={zones.map((value) => ({ value, label: words.terms.zoneNames[value] }))}
        />
        <Pick
          label={text.place}
          value={draft.place}
          onChange={(place) => set({ place })}
          options={places.map((value) => ({ value, label: value.replaceAll('-', ' ') }))}
        />
        <ListField
          label={text.after}
          hint={text.afterHint}
          ids={draft.after}
          options={steps}
          nameOf={names.step}
          onChange={(after) => set({ after })}
        />
        <ListField
          label={text.relies}
          hint={text.reliesHint}
          ids={draft.reliesOn}
          options={steps}
          nameOf={names.step}
          onChange={(reliesOn) => set({ reliesOn })}
        />
      </div>
      <EffortFields typed={draft.effort} onChange={(effort) => set({ effort })} isWrong={isTried} />
      <ConditionsField
        conditions={draft.conditions}
        onChange={(conditions) => set({ conditions })}
      />
      {held?.joint === undefined && (
        <Choice
          label={text.tightens}
          value={draft.joint === undefined ? 'nothing' : 'own'}
          onChange={(what) => set({ joint: what === 'own' ? emptyJoint : undefined })}
          options={[
            { value: 'nothing', label: text.nothing },
            { value: 'own', label: text.ownJoint },
          ]}
        />
      )}
      {draft.joint !== undefined && (
        <JointFields joint={draft.joint} onChange={(joint) => set({ joint })} isTried={isTried} />
      )}
      <ListField
        label={text.lookedAtBy}
        ids={draft.lookedAtBy}
        options={now.points.map((point) => ({ value: point.id, label: point.name }))}
        nameOf={names.point}
        onChange={(lookedAtBy) => set({ lookedAtBy })}
      />
      <ReasonField change={change} />
      <div className={styles.buttons}>
        <Button
          tone="solid"
          busy={change.isBusy}
          detail={text.saveDetail}
          onPress={() => void keep()}
        >
          {held === undefined ? text.addOwn : text.save}
        </Button>
      </div>
    </Page>
  );
}

function pointsThatConfirm(step: string, { now }: ShownCatalogue): readonly string[] {
  return now.points.filter(({ reliesOn }) => reliesOn.includes(step)).map(({ id }) => id);
}

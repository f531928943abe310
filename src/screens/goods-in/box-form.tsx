/** One box, typed by hand: what names it first, what the work depends on next. */

import { useEffect, useEffectEvent, useRef, useState } from 'react';
import { useLocation } from 'wouter';
import { useStore } from 'zustand';
import { bikeKinds } from '../../engine/bike';
import { words } from '../../words';
import { useApp } from '../app-context';
import { BikeFields } from '../bike-fields';
import type { BoxDraft } from '../box-answers';
import { draftLike, emptyDraft, readDraft, withKind } from '../box-draft';
import { Button, FilePicker, Notice, Pick, Problem, TextField } from '../parts';
import { routes } from '../routes';
import styles from './goods-in.module.css';

const draftKey = 'goods-in';

export function BoxForm() {
  const app = useApp();
  const [, go] = useLocation();
  const kept = useStore(app.session, ({ drafts }) => drafts[draftKey]);
  const rows = useStore(app.rack, (rack) => rack.rows);
  const [draft, setDraft] = useState<BoxDraft>(() => draftFrom(kept));
  const [photos, setPhotos] = useState<readonly string[]>([]);
  const [complaints, complain] = useState(0);
  const form = useRef<HTMLDivElement>(null);
  /** The first field that is not right comes into sight, and takes the cursor. */
  useEffect(() => {
    if (complaints > 0) form.current?.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
  }, [complaints]);
  const [problem, setProblem] = useState<string>();
  const [taken, setTaken] = useState<{ readonly job: string; readonly frame: string }>();
  const reading = readDraft(draft);
  const isKnown = rows.some(
    ({ frameNumber }) => frameNumber === draft.frameNumber.trim().toUpperCase(),
  );
  const change = (part: Partial<BoxDraft>) => {
    const changed = { ...draft, ...part };
    setDraft(changed);
    app.session.getState().draft(draftKey, JSON.stringify(changed));
  };
  const [known, setKnown] = useState<string>();
  /** A bike that came before under the same article number describes this one. */
  const scan = async (gtin: string) => {
    change({ gtin });
    const row = rows.find((one) => one.gtin !== undefined && one.gtin === gtin.trim());
    const bike = row && (await app.bikeOf(row.job));
    setKnown(bike && words.goodsIn.scanned(bike.make, bike.model));
    if (bike !== undefined) change({ ...draftLike(bike, draft), gtin });
  };
  const scanned = useEffectEvent((code: string) => void scan(code));
  useEffect(() => app.onCode((code) => scanned(code)), [app]);
  const wrong = (place: string) =>
    complaints > 0 && !reading.ok ? reading.wrong.get(place) : undefined;

  const photograph = async (file: File) => {
    const photo = await app.keepPhoto(file);
    if (photo.ok) setPhotos([...photos, photo.value]);
    else setProblem(words.refusal({ ...photo.refusal }));
  };
  const takeIn = async () => {
    setTaken(undefined);
    complain((times) => times + 1);
    if (!reading.ok || isKnown) return setProblem(words.goodsIn.correctFirst);
    const received = await app.receiveBox({
      bike: reading.bike,
      ...(draft.due !== '' && { due: draft.due }),
      ...(draft.cartonDamage.trim() !== '' && { cartonDamage: draft.cartonDamage.trim() }),
      photos,
    });
    if (!received.ok) return setProblem(words.refusal({ ...received.refusal }));
    app.session.getState().draft(draftKey, '');
    setTaken({ job: received.value, frame: reading.bike.frameNumber });
    setProblem(undefined);
    complain(0);
    setPhotos([]);
    setDraft({ ...draft, frameNumber: '', cartonDamage: '' });
  };

  return (
    <div ref={form} className={styles.form}>
      <div className={styles.fields}>
        <TextField
          label={words.goodsIn.scan}
          value={draft.gtin}
          onChange={(gtin) => void scan(gtin)}
          hint={known}
          error={wrong('gtin')}
          maxLength={14}
        />
        <Pick
          label={words.goodsIn.kind}
          value={draft.kind}
          onChange={(kind) => setDraft(withKind(draft, kind))}
          options={bikeKinds.map((value) => ({
            value,
            label: words.goodsIn.answerText(value),
          }))}
          error={wrong('kind')}
        />
        <TextField
          label={words.goodsIn.make}
          value={draft.make}
          onChange={(make) => change({ make })}
          error={wrong('make')}
          maxLength={80}
          autoCapitalize="words"
        />
        <TextField
          label={words.goodsIn.model}
          value={draft.model}
          onChange={(model) => change({ model })}
          error={wrong('model')}
          maxLength={80}
          autoCapitalize="words"
        />
        <TextField
          label={words.goodsIn.frameNumber}
          hint={words.goodsIn.frameHint}
          value={draft.frameNumber}
          onChange={(frameNumber) => change({ frameNumber })}
          autoCapitalize="characters"
          maxLength={30}
          error={
            isKnown && draft.frameNumber !== '' ? words.goodsIn.frameTaken : wrong('frameNumber')
          }
        />
        <TextField
          label={words.goodsIn.due}
          hint={words.goodsIn.dueHint}
          type="datetime-local"
          value={draft.due}
          onChange={(due) => change({ due })}
        />
        <TextField
          label={words.goodsIn.colour}
          value={draft.colour}
          onChange={(colour) => change({ colour })}
          maxLength={80}
        />
        <TextField
          label={words.goodsIn.size}
          value={draft.size}
          onChange={(size) => change({ size })}
          maxLength={80}
        />
      </div>
      <BikeFields draft={draft} onChange={change} wrong={wrong} />
      <div className={styles.fields}>
        <TextField
          label={words.goodsIn.carton}
          hint={words.goodsIn.cartonHint}
          value={draft.cartonDamage}
          onChange={(cartonDamage) => change({ cartonDamage })}
          maxLength={200}
        />
        <div className={styles.photo}>
          <FilePicker accept="image/*" capture onPick={(file) => void photograph(file)}>
            {words.goodsIn.photo}
          </FilePicker>
          {photos.length > 0 && <span role="status">{words.goodsIn.photoKept(photos.length)}</span>}
        </div>
      </div>
      {taken !== undefined && (
        <Notice
          as="status"
          actions={
            <Button onPress={() => go(routes.stand(taken.job))}>{words.goodsIn.openNow}</Button>
          }
        >
          <p>{words.goodsIn.taken(taken.frame)}</p>
        </Notice>
      )}
      <Problem>{problem}</Problem>
      <Button tone="solid" wide detail={words.goodsIn.takeDetail} onPress={() => void takeIn()}>
        {words.goodsIn.take}
      </Button>
    </div>
  );
}

/** What was typed before somebody walked away, where it still has the shape of a draft. */
function draftFrom(kept: string | undefined): BoxDraft {
  if (kept === undefined) return emptyDraft;
  try {
    return { ...emptyDraft, ...(JSON.parse(kept) as Partial<BoxDraft>) }; // only this form writes it
  } catch {
    return emptyDraft;
  }
}

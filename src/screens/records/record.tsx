/** One record: its sheet to print, whether it is unaltered, what was added later, and the whole log. */

import { useEffect, useState } from 'react';
import { useStore } from 'zustand';
import { sheetOf } from '../../engine/sheet';
import { SheetPage } from '../../print';
import { words } from '../../words';
import { useApp, useNames } from '../app-context';
import { SomebodyFirst } from '../hands';
import { JobFrame } from '../job-frame';
import { Button, Dialog, Notice, Page, Problem, TextField } from '../parts';
import type { ShownJob } from '../use-job';
import { RecordLog } from './record-log';
import styles from './records.module.css';
import { SaveRecord } from './save-record';
import { Unaltered } from './unaltered';

export function Record({ job }: { readonly job: string }) {
  return <JobFrame job={job}>{(shown) => <RecordOf shown={shown} />}</JobFrame>;
}

function RecordOf({ shown }: { readonly shown: ShownJob }) {
  const app = useApp();
  const { state, job, heads, entries } = shown.open;
  const names = useNames(state.plan);
  const shop = useStore(app.shop, ({ name }) => name);
  const { code, drawn, customer, forgetCustomer } = useSheetExtras(shown);
  const [isAmending, amend] = useState(false);
  const [showsLog, showLog] = useState(false);
  const [isErasing, erase] = useState(false);
  const sheet = sheetOf({
    job,
    state,
    heads,
    entries: entries.length,
    shop,
    nameOf: names.person,
    customer,
    on: app.clock.today(),
  });
  if (sheet === undefined) return <Page title={words.records.notFound}>{null}</Page>;
  return (
    <main className={styles.record}>
      <div className={styles.tools} data-on-screen-only>
        <Button
          tone="solid"
          onPress={() => app.printSheet(`${sheet.bike.frameNumber} ${sheet.record}`)}
        >
          {words.handOver.print}
        </Button>
        {sheet.isSealed && <Button onPress={() => amend(true)}>{words.records.amend}</Button>}
        {sheet.isSealed && customer !== undefined && (
          <Button onPress={() => erase(true)}>{words.records.erase}</Button>
        )}
        <Button pressed={showsLog} onPress={() => showLog(!showsLog)}>
          {words.records.showLog}
        </Button>
        <SaveRecord job={job} name={`${sheet.bike.frameNumber}-${sheet.record}`} />
        <Unaltered key={heads.join()} job={job} />
      </div>
      <SheetPage sheet={sheet} names={names} code={code} drawn={drawn} />
      {showsLog && <RecordLog entries={entries} state={state} names={names} />}
      {isErasing && (
        <EraseDialog
          digest={state.handedOver?.customer ?? ''}
          onErased={forgetCustomer}
          onClose={() => erase(false)}
        />
      )}
      {isAmending && <AmendDialog shown={shown} onClose={() => amend(false)} />}
    </main>
  );
}

/** What the sheet shows that is not in the log: the code, the customer's name and drawn signature. */
function useSheetExtras({ open }: ShownJob) {
  const app = useApp();
  const { job, state, heads } = open;
  const received = state.signatures.findLast(({ meaning }) => meaning === 'received');
  const digest = state.handedOver?.customer;
  const strokes = received?.strokes;
  const [code, setCode] = useState<string>();
  const [customer, setCustomer] = useState<string>();
  const [drawn, setDrawn] = useState<string>();
  const head = heads.join();
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new head asks for a new code
  useEffect(() => {
    void app.sealCode(job).then((made) => setCode(made.ok ? made.value : undefined));
  }, [app, job, head]);
  useEffect(() => {
    if (digest !== undefined) void app.customerOf(digest).then((found) => setCustomer(found?.name));
  }, [app, digest]);
  useEffect(() => {
    if (strokes === undefined) return;
    let address: string | undefined;
    void app.photo(strokes).then((blob) => {
      if (blob === undefined) return;
      address = URL.createObjectURL(new Blob([blob.bytes.slice()], { type: blob.type }));
      setDrawn(address);
    });
    return () => {
      if (address !== undefined) URL.revokeObjectURL(address);
    };
  }, [app, strokes]);
  return { code, customer, drawn, forgetCustomer: () => setCustomer(undefined) };
}

interface EraseDialogProps {
  readonly digest: string;
  readonly onErased: () => void;
  readonly onClose: () => void;
}

function EraseDialog({ digest, onErased, onClose }: EraseDialogProps) {
  const app = useApp();
  const [problem, setProblem] = useState<string>();
  const eraseThem = async () => {
    const erased = await app.eraseCustomer(digest);
    if (!erased.ok) return setProblem(words.refusal({ ...erased.refusal }));
    onErased();
    onClose();
  };
  return (
    <Dialog
      title={words.records.eraseTitle}
      closeLabel={words.app.cancel}
      onClose={onClose}
      actions={
        <Button tone="solid" onPress={() => void eraseThem()}>
          {words.records.eraseButton}
        </Button>
      }
    >
      <Notice>
        <p>{words.records.eraseText}</p>
      </Notice>
      <Problem>{problem}</Problem>
    </Dialog>
  );
}

function AmendDialog({
  shown,
  onClose,
}: {
  readonly shown: ShownJob;
  readonly onClose: () => void;
}) {
  const [text, setText] = useState('');
  return (
    <Dialog
      title={words.records.amendTitle}
      closeLabel={words.app.cancel}
      onClose={onClose}
      actions={
        <Button
          tone="solid"
          onPress={() =>
            void shown.store.act({ kind: 'amend-record', text }).then((kept) => kept && onClose())
          }
        >
          {words.records.amendButton}
        </Button>
      }
    >
      <SomebodyFirst />
      <TextField
        label={words.records.amendTitle}
        hint={words.records.amendHint}
        value={text}
        onChange={setText}
        lines={3}
        maxLength={500}
      />
    </Dialog>
  );
}

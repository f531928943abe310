/** A record file or a backup: verified and shown first, taken in or restored when somebody says so. */

import { useLocation } from 'wouter';
import { useStore } from 'zustand';
import type { FileLooked, TakenIn } from '../../state';
import { words } from '../../words';
import { fileWords } from '../../words/file-words';
import { useApp } from '../app-context';
import { Button, FilePicker, Notice, Page, Problem, Working } from '../parts';
import { routes } from '../routes';
import { LookedList } from './looked-list';
import { NewPins } from './new-pins';
import styles from './shop.module.css';
import { useTakingIn } from './use-taking-in';

export function TakeIn() {
  const { looked, older, taken, isRestored, problem, working, look, take, restore, restoreOlder } =
    useTakingIn();
  return (
    <Page title={fileWords.takeIn.title}>
      <div className={styles.keeping}>
        <p>{fileWords.takeIn.text}</p>
        <div className={styles.buttons}>
          <FilePicker
            tone={looked === undefined && taken === undefined ? 'solid' : 'plain'}
            accept=".zip,.json,application/zip,application/json"
            busy={working !== undefined}
            onPick={(file) => void look(file)}
          >
            {fileWords.takeIn.choose}
          </FilePicker>
        </div>
        {working !== undefined && <Working>{working}</Working>}
        <Problem>{problem}</Problem>
        {looked !== undefined && working === undefined && (
          <Looked looked={looked} onTake={take} onRestore={restore} />
        )}
        {older !== undefined && working === undefined && (
          <Notice
            actions={
              <Button tone="solid" onPress={() => void restoreOlder()}>
                {fileWords.takeIn.restore}
              </Button>
            }
          >
            <p>
              {fileWords.takeIn.older} {fileWords.takeIn.olderText}
            </p>
          </Notice>
        )}
        {taken !== undefined && <Taken taken={taken} isRestored={isRestored} />}
      </div>
    </Page>
  );
}

interface LookedProps {
  readonly looked: FileLooked;
  readonly onTake: () => Promise<void>;
  readonly onRestore: () => Promise<void>;
}

function Looked({ looked, onTake, onRestore }: LookedProps) {
  const app = useApp();
  const isDemo = useStore(app.shop, ({ demo }) => demo);
  const isEmpty = useStore(app.rack, ({ rows }) => rows.length === 0);
  const isBrokenOff = useStore(app.backup, ({ isRestoring }) => isRestoring);
  const { file, good, newSigners } = looked;
  const { shop, at, scope } = file.manifest;
  const canRestore = scope === 'shop' && (isDemo || isEmpty || isBrokenOff) && good.length > 0;
  const added = good.filter(({ standing }) => standing !== 'same' && standing !== 'behind').length;
  const name = shop.name === '' ? fileWords.takeIn.fromNobody : shop.name;
  const signers = newSigners.map((signer) => signer || fileWords.takeIn.ofADevice);
  return (
    <>
      <p>{fileWords.takeIn.from(name, `${words.date(at)}, ${words.time(at)}`)}</p>
      {newSigners.length > 0 && (
        <Notice>
          <p>{fileWords.takeIn.newSigners(words.writing.listed([...new Set(signers)]))}</p>
        </Notice>
      )}
      <LookedList looked={looked} />
      {canRestore && <p>{fileWords.takeIn.restoreText}</p>}
      <div className={styles.buttons}>
        {canRestore && (
          <Button tone="solid" onPress={() => void onRestore()}>
            {isDemo ? fileWords.takeIn.restoreDemo : fileWords.takeIn.restore}
          </Button>
        )}
        {!canRestore && added > 0 && (
          <Button tone="solid" onPress={() => void onTake()}>
            {fileWords.takeIn.take(added)}
          </Button>
        )}
      </div>
      {!canRestore && added === 0 && good.length > 0 && <p>{fileWords.takeIn.nothing}</p>}
    </>
  );
}

function Taken({ taken, isRestored }: { readonly taken: TakenIn; readonly isRestored: boolean }) {
  const [, go] = useLocation();
  const { fresh, grown, known, refused } = taken;
  return (
    <>
      <Notice as="status">
        <p>
          {isRestored
            ? fileWords.takeIn.restored(fresh + grown + known)
            : fileWords.takeIn.taken(fresh, grown, known)}
        </p>
      </Notice>
      {refused.length > 0 && (
        <Notice as="alert">
          <p>{fileWords.takeIn.refusedNow(refused.length)}</p>
          {refused.map(({ job, refusal }) => (
            <p key={job}>{fileWords.refusal({ ...refusal })}</p>
          ))}
        </Notice>
      )}
      {isRestored && <NewPins />}
      <div className={styles.buttons}>
        <Button onPress={() => go(routes.rack)}>{fileWords.takeIn.toRack}</Button>
      </div>
    </>
  );
}

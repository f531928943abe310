/** The frame round every place that is not a job: places, who is there, and what the app has to say about itself. */

import type { ReactNode } from 'react';
import { Link, useLocation } from 'wouter';
import { useStore } from 'zustand';
import { words } from '../words';
import { useApp } from './app-context';
import { BackupReminder } from './backup-reminder';
import { HandsButton } from './hands';
import { Button, classes, Notice } from './parts';
import { routes } from './routes';
import styles from './shell.module.css';

const places = [
  [routes.rack, words.app.rack],
  [routes.goodsIn, words.app.goodsIn],
  [routes.toolBoard, words.app.toolBoard],
  [routes.catalogue, words.app.catalogue],
  [routes.records, words.app.records],
  [routes.shop, words.app.shop],
] as const;

export function Shell({ children }: { readonly children: ReactNode }) {
  const [at] = useLocation();
  const isAtJob = at.startsWith('/job/');
  return (
    <>
      {!isAtJob && (
        <>
          <header className={styles.header} data-on-screen-only>
            <nav aria-label={words.app.places} className={styles.places}>
              {places.map(([href, label]) => (
                <Link
                  key={href}
                  href={href}
                  aria-current={at === href ? 'page' : undefined}
                  className={classes(styles.place, at === href && styles.here)}
                >
                  {label}
                </Link>
              ))}
            </nav>
            <HandsButton />
          </header>
          <AboutTheApp />
        </>
      )}
      {children}
    </>
  );
}

/** Only where no job is open: nothing here may come under a hand at work. */
function AboutTheApp() {
  const app = useApp();
  const isDemo = useStore(app.shop, ({ demo }) => demo);
  const hasUpdate = useStore(app.update, ({ offered }) => offered);
  const canInstall = useStore(app.install, ({ offered, installed }) => offered && !installed);
  // Until the session has been read, nobody knows whether the offer was put off.
  const mayOffer = useStore(app.session, (one) => one.loaded && !one.preferences.installPutOff);
  const isInstallOffered = canInstall && mayOffer;
  const trouble = useStore(app.trouble, ({ refusal }) => refusal);
  return (
    <aside className={styles.about} data-on-screen-only>
      {trouble !== undefined && (
        <Notice
          as="alert"
          actions={<Button onPress={() => window.location.reload()}>{words.app.reload}</Button>}
        >
          <p>{words.refusal({ ...trouble })}</p>
        </Notice>
      )}
      {isDemo && (
        <p className={styles.demo}>
          {words.app.demo} <Link href={routes.takeIn}>{words.rack.restore}</Link>
        </p>
      )}
      {!isDemo && <BackupReminder />}
      {hasUpdate && (
        <Notice
          as="status"
          actions={<Button onPress={() => app.applyUpdate()}>{words.app.takeUpdate}</Button>}
        >
          <p>{words.app.updateOffered}</p>
        </Notice>
      )}
      {isInstallOffered && (
        <Notice
          as="status"
          actions={
            <>
              <Button onPress={() => void app.askToInstall()}>{words.app.install}</Button>
              <Button onPress={() => app.session.getState().prefer({ installPutOff: true })}>
                {words.app.close}
              </Button>
            </>
          }
        >
          <p>{words.app.installOffered}</p>
        </Notice>
      )}
    </aside>
  );
}

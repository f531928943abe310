/** The app: its places by address, opened one by one as they are needed. */

import { Component, lazy, type ReactNode, Suspense, useEffect, useState } from 'react';
import { Route, Router, Switch } from 'wouter';
import { useHashLocation } from 'wouter/use-hash-location';
import { useStore } from 'zustand';
import type { App } from '../state';
import { words } from '../words';
import './tokens.css';
import './base.css';
import { AppContext, useApp } from './app-context';
import { Button, Notice, Page, Working } from './parts';
import { Rack } from './rack/rack';
import { Shell } from './shell';

const Catalogue = lazy(() =>
  import('./catalogue/catalogue').then((m) => ({ default: m.Catalogue })),
);
const GoodsIn = lazy(() => import('./goods-in/goods-in').then((m) => ({ default: m.GoodsIn })));
const HandOver = lazy(() => import('./hand-over/hand-over').then((m) => ({ default: m.HandOver })));
const Record = lazy(() => import('./records/record').then((m) => ({ default: m.Record })));
const Records = lazy(() => import('./records/records').then((m) => ({ default: m.Records })));
const SecondCheck = lazy(() =>
  import('./second-check/second-check').then((m) => ({ default: m.SecondCheck })),
);
const Shop = lazy(() => import('./shop/shop').then((m) => ({ default: m.Shop })));
const Stand = lazy(() => import('./stand/stand').then((m) => ({ default: m.Stand })));
const ToolBoard = lazy(() =>
  import('./tool-board/tool-board').then((m) => ({ default: m.ToolBoard })),
);
const DayPage = lazy(() => import('./shop/day-page').then((m) => ({ default: m.DayPage })));
const TakeIn = lazy(() => import('./shop/take-in').then((m) => ({ default: m.TakeIn })));
const Verify = lazy(() => import('./records/verify').then((m) => ({ default: m.Verify })));
const WrenchPage = lazy(() =>
  import('./tool-board/wrench-page').then((m) => ({ default: m.WrenchPage })),
);
const CalibrationPage = lazy(() =>
  import('./tool-board/calibration-page').then((m) => ({ default: m.CalibrationPage })),
);
const ReachBackPage = lazy(() =>
  import('./tool-board/reach-back-page').then((m) => ({ default: m.ReachBackPage })),
);
const IdleLock = lazy(() => import('./idle-lock').then((m) => ({ default: m.IdleLock })));
const Walk = lazy(() => import('./walk/walk').then((m) => ({ default: m.Walk })));

export function StandbookApp({ app }: { readonly app: App }) {
  return (
    <AppContext value={app}>
      <Router hook={useHashLocation}>
        <Theme />
        <Unbroken>
          <FirstStart>
            <Shell>
              <Suspense fallback={<Opening />}>
                <Places />
              </Suspense>
              <Suspense>
                <IdleLock />
              </Suspense>
            </Shell>
          </FirstStart>
        </Unbroken>
      </Router>
    </AppContext>
  );
}

function Places() {
  return (
    <Switch>
      <Route path="/" component={Rack} />
      <Route path="/goods-in" component={GoodsIn} />
      <Route path="/tool-board" component={ToolBoard} />
      <Route path="/tool-board/:id">{({ id }) => <WrenchPage key={id} id={id} />}</Route>
      <Route path="/tool-board/:id/calibration">
        {({ id }) => <CalibrationPage key={id} id={id} />}
      </Route>
      <Route path="/tool-board/:id/bikes/:doubt">
        {({ id, doubt }) => <ReachBackPage key={`${id} ${doubt}`} id={id} doubt={doubt} />}
      </Route>
      <Route path="/catalogue/*?" component={Catalogue} />
      <Route path="/records" component={Records} />
      <Route path="/records/verify" component={Verify} />
      <Route path="/shop" component={Shop} />
      <Route path="/shop/record-file" component={TakeIn} />
      <Route path="/shop/day" component={DayPage} />
      <Route path="/record/:job">{({ job }) => <Record key={job} job={job} />}</Route>
      <Route path="/job/:job">{({ job }) => <Stand key={job} job={job} />}</Route>
      <Route path="/job/:job/walk">{({ job }) => <Walk key={job} job={job} />}</Route>
      <Route path="/job/:job/check">{({ job }) => <SecondCheck key={job} job={job} />}</Route>
      <Route path="/job/:job/hand-over">{({ job }) => <HandOver key={job} job={job} />}</Route>
      <Route>
        <Page title={words.app.nothingHere}>{null}</Page>
      </Route>
    </Switch>
  );
}

function Opening() {
  return (
    <Page title={words.app.opening}>
      <Working>{words.app.opening}</Working>
    </Page>
  );
}

function Theme() {
  const theme = useStore(useApp().session, ({ preferences }) => preferences.theme);
  useEffect(() => {
    const root = document.documentElement;
    if (theme === 'system') delete root.dataset.theme;
    else root.dataset.theme = theme;
  }, [theme]);
  return null;
}

/** On the very first start the demo shop is set up, with a sign of how far it is. */
function FirstStart({ children }: { readonly children: ReactNode }) {
  const app = useApp();
  const { loaded, empty } = useStore(app.shop);
  const [progress, setProgress] = useState<readonly [number, number]>();
  const [problem, setProblem] = useState<string>();
  const [attempt, setAttempt] = useState(0);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another attempt tries again
  useEffect(() => {
    if (!loaded || !empty) return;
    void app
      .openDemoShop((done, of) => setProgress([done, of]))
      .then((opened) => setProblem(opened.ok ? undefined : words.refusal({ ...opened.refusal })));
  }, [app, loaded, empty, attempt]);
  if (problem !== undefined)
    return (
      <Page title={words.app.openFailed}>
        <Notice
          as="alert"
          actions={<Button onPress={() => setAttempt(attempt + 1)}>{words.app.tryAgain}</Button>}
        >
          <p>{problem}</p>
        </Notice>
      </Page>
    );
  if (!loaded || empty)
    return (
      <Page title={words.app.opening}>
        <Working>
          {progress === undefined ? words.app.opening : words.app.fillingDemo(...progress)}
        </Working>
      </Page>
    );
  return children;
}

/** A bug on a screen says that the work is safe, and offers the way on. */
class Unbroken extends Component<{ readonly children: ReactNode }, { readonly broken: boolean }> {
  override state = { broken: false };

  static getDerivedStateFromError() {
    return { broken: true };
  }

  override render() {
    if (!this.state.broken) return this.props.children;
    return (
      <Page title={words.app.crashed}>
        <Button tone="solid" onPress={() => window.location.reload()}>
          {words.app.reload}
        </Button>
      </Page>
    );
  }
}

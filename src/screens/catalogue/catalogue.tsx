/** The catalogue: read and searched by everybody, changed by a supervisor with a reason, and kept in versions. */

import { Link, Route, Switch, useLocation } from 'wouter';
import { words } from '../../words';
import { catalogueWords } from '../../words/catalogue';
import { useHands } from '../app-context';
import { Button, Notice, Page, Working } from '../parts';
import { routes } from '../routes';
import styles from './catalogue.module.css';
import { History } from './history';
import { OwnStepPage } from './own-step-page';
import { StepList } from './step-list';
import { StepPage } from './step-page';
import { maySupervise, useCatalogue } from './use-catalogue';

export function Catalogue() {
  const shown = useCatalogue();
  const [, go] = useLocation();
  const isSupervisor = maySupervise(useHands()?.roles);
  if (shown === undefined)
    return (
      <Page title={catalogueWords.title}>
        <Working>{words.app.opening}</Working>
      </Page>
    );
  return (
    <Switch>
      <Route path="/catalogue/changes">
        <History shown={shown} isSupervisor={isSupervisor} />
      </Route>
      <Route path="/catalogue/own">
        <OwnStepPage key="new" shown={shown} />
      </Route>
      <Route path="/catalogue/own/:id">
        {({ id }) => <OwnStepPage key={id} shown={shown} id={id} />}
      </Route>
      <Route path="/catalogue/step/:id">
        {({ id }) => <StepPage key={id} shown={shown} id={id} isSupervisor={isSupervisor} />}
      </Route>
      <Route>
        <Page
          title={catalogueWords.title}
          beside={
            <>
              {isSupervisor && (
                <Button tone="solid" onPress={() => go(routes.catalogueOwn(''))}>
                  {catalogueWords.addStep}
                </Button>
              )}
              <Link className={styles.link} href={routes.catalogueChanges}>
                {catalogueWords.changes}
              </Link>
            </>
          }
        >
          <p className={styles.intro}>
            {catalogueWords.intro} {!isSupervisor && catalogueWords.readOnly}
          </p>
          {shown.fault !== undefined && (
            <Notice as="alert">
              <p>{catalogueWords.faulty}</p>
              <p>{shown.fault}</p>
            </Notice>
          )}
          <StepList shown={shown} />
        </Page>
      </Route>
    </Switch>
  );
}

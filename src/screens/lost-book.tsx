/** The browser has cleared the book: said plainly, with the ways on, before anything else is put in its place. */

import { useLocation } from 'wouter';
import { peopleLabels, words } from '../words';
import { useApp } from './app-context';
import { ActionBar, Page } from './parts';
import { routes } from './routes';

interface LostBookProps {
  /** ISO date. */
  readonly lastSeen: string;
  readonly onRestore: () => void;
  readonly onAnew: () => void;
}

export function LostBook({ lastSeen, onRestore, onAnew }: LostBookProps) {
  const app = useApp();
  const [, go] = useLocation();
  return (
    <Page
      title={peopleLabels.lostBook}
      bar={
        <ActionBar
          aside={[
            {
              label: peopleLabels.lostBookAnew,
              onPress: () => {
                app.forgetLostShop();
                onAnew();
              },
            },
          ]}
          action={{
            label: words.rack.restore,
            onPress: () => {
              go(routes.takeIn);
              onRestore();
            },
          }}
        />
      }
    >
      <p>{peopleLabels.lostBookText(words.date(lastSeen))}</p>
      <p>{peopleLabels.lostBookWay}</p>
    </Page>
  );
}

/** What every screen may hold on to: the one app, made in main. */

import { createContext, useContext } from 'react';
import { useStore } from 'zustand';
import type { JobPlan } from '../engine/job';
import type { App, Person } from '../state';
import { type Names, namesFrom } from '../words';

export const AppContext = createContext<App | undefined>(undefined);

export function useApp(): App {
  const app = useContext(AppContext);
  if (app === undefined) throw new Error('a screen was shown outside the app');
  return app;
}

/** Who is at the stand, where somebody is. */
export function useHands(): Person | undefined {
  const app = useApp();
  const id = useStore(app.session, ({ person }) => person);
  const people = useStore(app.people, ({ rows }) => rows);
  return people.find((person) => person.id === id && person.active);
}

/** Names for what facts refer to by id. */
export function useNames(plan: JobPlan | undefined): Names {
  const people = useStore(useApp().people, ({ rows }) => rows);
  return namesFrom(plan, people);
}

/** What needs a PIN besides signing, fetched from the device when it is first asked for. */

import type { PeopleActions } from './people-actions';

export function peopleWhenNeeded(load: () => Promise<PeopleActions>): PeopleActions {
  let loaded: Promise<PeopleActions> | undefined;
  const people = () => {
    loaded ??= load();
    return loaded;
  };
  return {
    comeWithPin: async (person, pin) => (await people()).comeWithPin(person, pin),
    addPerson: async (person, by) => (await people()).addPerson(person, by),
    retirePerson: async (person, by) => (await people()).retirePerson(person, by),
    issuePin: async (asked) => (await people()).issuePin(asked),
    standLock: async () => (await people()).standLock(),
    keysKeptAs: async () => (await people()).keysKeptAs(),
  };
}

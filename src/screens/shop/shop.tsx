/** The shop: whose book this is, its people, where the book is kept, and how this tablet likes it. */

import { useStore } from 'zustand';
import { pressureUnits } from '../../engine/units';
import { lockMinutes, themes } from '../../state';
import { peopleLabels, words } from '../../words';
import { useApp } from '../app-context';
import { Choice, Page, TextField } from '../parts';
import { Backup } from './backup';
import { Keeping } from './keeping';
import { KeysKept } from './keys-kept';
import { OwnShop } from './own-shop';
import { People } from './people';

export function Shop() {
  const { name, demo } = useStore(useApp().shop);
  return (
    <Page title={name === '' ? words.shop.title : name}>
      {demo && (
        <section>
          <h2>{words.shop.demoTitle}</h2>
          <p>{words.shop.demoText}</p>
        </section>
      )}
      <KeysKept />
      <People />
      <Backup />
      <Keeping />
      <Tablet />
      <OwnShop />
      <p>{words.shop.notLegal}</p>
    </Page>
  );
}

function Tablet() {
  const app = useApp();
  const { preferences, prefer } = useStore(app.session);
  return (
    <section>
      <h2>{words.shop.preferences}</h2>
      <Choice
        label={words.shop.theme}
        value={preferences.theme}
        onChange={(theme) => prefer({ theme })}
        options={themes.map((value) => ({ value, label: words.shop.themes[value] }))}
      />
      <Choice
        label={words.shop.pressure}
        value={preferences.pressureUnit}
        onChange={(pressureUnit) => prefer({ pressureUnit })}
        options={pressureUnits.map((value) => ({ value, label: value }))}
      />
      <Choice
        label={peopleLabels.lock}
        value={`${preferences.lockAfter}`}
        onChange={(text) =>
          prefer({ lockAfter: lockMinutes.find((minutes) => `${minutes}` === text) ?? 0 })
        }
        options={lockMinutes.map((minutes) => ({
          value: `${minutes}` as const,
          label: peopleLabels.lockTexts[`${minutes}`],
        }))}
      />
      <Choice
        label={peopleLabels.askPin}
        value={preferences.askPin ? 'yes' : 'no'}
        onChange={(answer) => prefer({ askPin: answer === 'yes' })}
        options={(['no', 'yes'] as const).map((value) => ({ value, label: peopleLabels[value] }))}
      />
      <TextField
        label={words.shop.stand}
        value={preferences.stand}
        onChange={(stand) => prefer({ stand })}
        maxLength={30}
      />
    </section>
  );
}

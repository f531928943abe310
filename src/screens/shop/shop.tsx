/** The shop: whose book this is, its people, where the book is kept, and how this tablet likes it. */

import { useStore } from 'zustand';
import { pressureUnits } from '../../engine/units';
import { themes } from '../../state';
import { words } from '../../words';
import { useApp } from '../app-context';
import { Choice, Page, TextField } from '../parts';
import { Backup } from './backup';
import { Keeping } from './keeping';
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
      <TextField
        label={words.shop.stand}
        value={preferences.stand}
        onChange={(stand) => prefer({ stand })}
        maxLength={30}
      />
    </section>
  );
}

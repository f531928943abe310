/** The composition root: everything living is made here and handed on. */

import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { reloadOnceOnLostPart } from './pwa/lost-parts';
import { watchForUpdates } from './pwa/updates';

const place = document.getElementById('app');
if (place === null) throw new Error('index.html has no #app');

reloadOnceOnLostPart();
if (import.meta.env.PROD) watchForUpdates({ onOffered: () => undefined });

createRoot(place).render(
  <StrictMode>
    <main>
      <h1>Standbook</h1>
    </main>
  </StrictMode>,
);

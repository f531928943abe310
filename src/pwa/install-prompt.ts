/** Holds the browser's offer to install the app until a person asks for it. */

/** Chromium's event; no standard type exists, and Safari and Firefox never send it. */
interface InstallOffer extends Event {
  prompt(): Promise<{ readonly outcome: 'accepted' | 'dismissed' }>;
}

export type InstallAnswer = 'accepted' | 'dismissed' | 'not-offered';

export interface InstallPrompt {
  /** Whether asking now would show the browser's dialog. */
  isOffered(): boolean;
  /** Whether the app already runs in its own window. */
  isInstalled(): boolean;
  /** Shows the browser's dialog; an offer can be used once. */
  ask(): Promise<InstallAnswer>;
  /** Calls back whenever `isOffered` or `isInstalled` may have changed; returns how to stop. */
  onChange(listener: () => void): () => void;
}

/** Must be made before the first paint: the browser sends its offer once and early. */
export function createInstallPrompt(page: Window = window): InstallPrompt {
  const listeners = new Set<() => void>();
  let offer: InstallOffer | undefined;
  let installed = false;

  const tell = () => {
    for (const listener of listeners) listener();
  };
  page.addEventListener('beforeinstallprompt', (event) => {
    event.preventDefault();
    offer = event as InstallOffer; // the DOM types do not know this event
    tell();
  });
  page.addEventListener('appinstalled', () => {
    offer = undefined;
    installed = true;
    tell();
  });

  return {
    isOffered: () => offer !== undefined,
    isInstalled: () => installed || page.matchMedia('(display-mode: standalone)').matches,
    async ask() {
      if (offer === undefined) return 'not-offered';
      const held = offer;
      offer = undefined;
      const { outcome } = await held.prompt();
      tell();
      return outcome;
    },
    onChange(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

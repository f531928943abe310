/** How Chromium is started by the tests and the icon script: quiet, alone, and without asking anyone anything. */

export const browserFlags = [
  '--no-sandbox', // continuous integration often runs as root
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

import base from '/tmp/wt-evpeople/playwright.config';
export default { ...base, testDir: '/tmp/wt-evpeople/tests/browser', outputDir: '/tmp/pw-people-results', workers: 1, webServer: { ...(base as any).webServer, command: `node scripts/serve.mjs --root /tmp/dist-people --port ${process.env.STANDBOOK_TEST_PORT}`, cwd: '/tmp/wt-evpeople' } };

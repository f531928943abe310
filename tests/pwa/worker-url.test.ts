/** Only the service worker's own address becomes trusted. */

import { expect, test, vi } from 'vitest';
import { contentSecurityPolicy } from '../../scripts/security-headers.mjs';
import { workerUrl } from '../../src/pwa/worker-url';

test('a browser without trusted types gets the plain address', () => {
  expect(workerUrl({} as Window)).toBe('./service-worker.js');
});

test('the policy has the name the security policy allows, and trusts one address', () => {
  const createPolicy = vi.fn(
    (_name: string, rules: { createScriptURL: (url: string) => string }) => rules,
  );
  expect(workerUrl({ trustedTypes: { createPolicy } } as unknown as Window)).toBe(
    './service-worker.js',
  );
  const [[name, rules] = []] = createPolicy.mock.calls;
  expect(contentSecurityPolicy).toMatch(new RegExp(`trusted-types ${name}$`));
  expect(() => rules?.createScriptURL('./other.js')).toThrow('not the service worker');
});

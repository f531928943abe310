/** The one address that may become running code by name: the service worker's. */

import type { Workbox } from 'workbox-window';

type ScriptUrl = ConstructorParameters<typeof Workbox>[0];

interface ScriptUrlPolicy {
  createScriptURL(input: string): ScriptUrl;
}

interface ScriptUrlPolicies {
  createPolicy(name: string, rules: { createScriptURL: (url: string) => string }): ScriptUrlPolicy;
}

/** The name stands in the Content-Security-Policy, which allows no other. */
const policyName = 'standbook-service-worker';
const workerFile = './service-worker.js';

/** A trusted script address where the browser asks for one, a plain text elsewhere. */
export function workerUrl(page: Window & { trustedTypes?: ScriptUrlPolicies } = window): ScriptUrl {
  const policies = page.trustedTypes;
  if (policies === undefined) return workerFile;
  const policy = policies.createPolicy(policyName, {
    createScriptURL(url) {
      if (url !== workerFile) throw new TypeError(`${url} is not the service worker`);
      return url;
    },
  });
  return policy.createScriptURL(workerFile);
}

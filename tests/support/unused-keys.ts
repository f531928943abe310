/** Keys of a test in which nobody signs, so that no PIN is stretched. */

import type { Keys } from '../../src/state';

const unused = async () =>
  ({ ok: false, refusal: { code: 'keys-unavailable', cause: '' } }) as const;

export const unusedKeys: Keys = {
  createFor: async () => ({ ok: true, value: true }),
  signAs: unused,
  isPinOf: async () => ({ ok: true, value: true }),
  holds: async () => false,
  keptAs: unused,
  signAsDevice: unused,
  verify: async () => ({ ok: false, refusal: { code: 'signature-wrong' } }),
  verifyWith: async () => ({ ok: false, refusal: { code: 'signature-wrong' } }),
};

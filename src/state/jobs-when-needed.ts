/** What changes a job, fetched from the device at the first job that is opened: the rack shows without it. */

import type { JobActions } from './services';

export function jobsWhenNeeded(load: () => Promise<JobActions>): JobActions {
  let loaded: Promise<JobActions> | undefined;
  const jobs = () => {
    loaded ??= load();
    return loaded;
  };
  return {
    openJobStore: async (job) => (await jobs()).openJobStore(job),
    receiveBox: async (box) => (await jobs()).receiveBox(box),
    startJob: async (job) => (await jobs()).startJob(job),
    readDeliveryList: async (text) => (await jobs()).readDeliveryList(text),
    keepDeliveries: async (rows) => (await jobs()).keepDeliveries(rows),
    sign: async (asked) => (await jobs()).sign(asked),
    allowFinding: async (asked) => (await jobs()).allowFinding(asked),
    confirmJoints: async (asked) => (await jobs()).confirmJoints(asked),
    handOver: async (asked) => (await jobs()).handOver(asked),
    checkLog: async (job) => (await jobs()).checkLog(job),
    checkSignatures: async (job) => (await jobs()).checkSignatures(job),
    sealCode: async (job) => (await jobs()).sealCode(job),
    bikeOf: async (job) => (await jobs()).bikeOf(job),
    findByFrameNumber: async (text) => (await jobs()).findByFrameNumber(text),
    customerOf: async (digest) => (await jobs()).customerOf(digest),
    photo: async (digest) => (await jobs()).photo(digest),
    keepPhoto: async (picked) => (await jobs()).keepPhoto(picked),
  };
}

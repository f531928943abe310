/** What people do with the tool board, by whoever is at the stand; its code is fetched when it is first needed. */

import { type Refusal, type Result, refuse } from '../engine/base';
import type { Person } from '../storage/contract';
import type { AppPorts } from './ports';
import type { NobodyAtTheStand, ToolActions } from './services';

export function createToolActions(ports: AppPorts, person: () => Person | undefined): ToolActions {
  const board = () => import('./tool-board');

  function byPerson<T, R extends Refusal>(
    work: (person: Person) => Promise<Result<T, R>>,
  ): Promise<Result<T, R | NobodyAtTheStand>> {
    const actor = person();
    if (actor === undefined) return Promise.resolve(refuse({ code: 'nobody-at-the-stand' }));
    return work(actor);
  }

  return {
    addTool: (tool) => byPerson(async (by) => (await board()).addTool(ports, tool, by)),
    describeWrench: (id, description) =>
      byPerson(async (by) => (await board()).describeWrench(ports, id, description, by)),
    describeAdapter: (adapter) =>
      byPerson(async (by) => (await board()).describeAdapter(ports, adapter, by)),
    retireAdapter: (id, isRetired) =>
      byPerson(async (by) => (await board()).retireAdapter(ports, id, isRetired, by)),
    changeCondition: (change) =>
      byPerson(async (by) => (await board()).changeCondition(ports, change, by)),
    calibrate: (calibration) =>
      byPerson(async (by) =>
        (await import('./tool-calibration')).calibrate(ports, calibration, by),
      ),
    reachBackFor: async (tool, doubt, onProgress) =>
      (await import('./reach-back')).reachBackFor(ports, tool, doubt, onProgress),
    callBack: (call) =>
      byPerson(async (by) => {
        const [{ callBack }, { createPerform }] = await Promise.all([
          import('./reach-back'),
          import('./perform'),
        ]);
        return callBack({ ...ports, perform: createPerform(ports) }, call, by);
      }),
  };
}

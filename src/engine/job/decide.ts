/** What follows from a command: events, or a refusal. One function per command; gates first. */

import { type Result, refuse } from '../base';
import type { Command, CommandKind } from './command';
import { buildDeciders } from './decide-building';
import { lifeDeciders } from './decide-life';
import { signingDeciders } from './decide-signing';
import { walkDeciders } from './decide-walk';
import type { Decider, Deciders } from './decider';
import type { JobEvent } from './event.schema';
import { gatesFor } from './gates';
import type { JobRefusal } from './refusal';
import type { JobState } from './state';

const deciders: Deciders<CommandKind> = {
  ...lifeDeciders,
  ...buildDeciders,
  ...walkDeciders,
  ...signingDeciders,
};

/** The events that a command adds to a job, or why it may not. Pure: the stamp carries who, when and on which heads. */
export function decide(command: Command, state: JobState): Result<readonly JobEvent[], JobRefusal> {
  const [gate] = gatesFor(state, command);
  if (gate !== undefined) return refuse(gate);
  return (deciders[command.kind] as Decider<CommandKind>)(command, state); // the kind chose it
}

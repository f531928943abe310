/** The shape of a decision: one function per command. */

import type { Result } from '../base';
import type { AskedOf, Command, CommandKind } from './command';
import type { JobEvent } from './event.schema';
import type { JobRefusal } from './refusal';
import type { JobState } from './state';

export type Decider<K extends CommandKind> = (
  command: AskedOf<K> & Pick<Command, 'stamp'>,
  state: JobState,
) => Result<readonly JobEvent[], JobRefusal>;

export type Deciders<K extends CommandKind> = { readonly [Kind in K]: Decider<Kind> };

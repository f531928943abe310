/** A place in the tokens of a marking that remembers the different units it has passed. */

import type { PrintedNumber, Token } from './marking-tokens';

type Kind = Token<string>['kind'];

export class Cursor<Unit extends string> {
  readonly units: Unit[] = [];

  constructor(
    private readonly tokens: readonly Token<Unit>[],
    public at: number,
  ) {}

  /** A number with the unit that may follow it. */
  number(): PrintedNumber | undefined {
    const token = this.tokens[this.at];
    if (token?.kind !== 'number') return undefined;
    this.at += 1;
    this.skipUnit();
    return { value: token.value, halfStep: token.halfStep };
  }

  bound(): 'min' | 'max' | undefined {
    const token = this.tokens[this.at];
    if (token?.kind !== 'bound') return undefined;
    this.at += 1;
    return token.bound;
  }

  /** "5 N·m max": the word belongs to the number before it unless another number follows; "5 N·m (max)" always does. */
  hasTrailingBound(): boolean {
    const token = this.tokens[this.at];
    return token?.kind === 'bound' && (token.trailing === true || !this.nextIs('number', 1));
  }

  take(kind: Kind): boolean {
    if (!this.nextIs(kind)) return false;
    this.at += 1;
    return true;
  }

  /** Whether the tokens from here on are of these kinds; units between them do not count. */
  nextAre(...kinds: readonly Kind[]): boolean {
    let ahead = this.at;
    return kinds.every((kind) => {
      while (kind !== 'unit' && this.tokens[ahead]?.kind === 'unit') ahead += 1;
      ahead += 1;
      return this.tokens[ahead - 1]?.kind === kind;
    });
  }

  nextIs(kind: Kind, ahead = 0): boolean {
    return this.tokens[this.at + ahead]?.kind === kind;
  }

  skipUnit(): void {
    const token = this.tokens[this.at];
    if (token?.kind !== 'unit') return;
    if (!this.units.includes(token.unit)) this.units.push(token.unit);
    this.at += 1;
  }
}

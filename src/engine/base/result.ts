/** An answer that may be a refusal: refusals are values, bugs are thrown. */

export interface Refusal {
  readonly code: string;
}

export type Ok<T> = { readonly ok: true; readonly value: T };
export type Refused<R extends Refusal> = { readonly ok: false; readonly refusal: R };
export type Result<T, R extends Refusal = Refusal> = Ok<T> | Refused<R>;

export function ok<T>(value: T): Ok<T> {
  return { ok: true, value };
}

export function refuse<const R extends Refusal>(refusal: R): Refused<R> {
  return { ok: false, refusal };
}

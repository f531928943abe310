/** A number that carries its unit in its type, so that newton metres never meet kilopascals by accident. */

declare const unitOf: unique symbol;

export type Branded<Unit extends string> = number & { readonly [unitOf]: Unit };

/** Numbers from outside, checked and given their unit at the door. */

import * as z from 'zod/mini';
import { millimetres, newtonMetres } from '../units';

export const newtonMetresSchema = z.pipe(z.number().check(z.positive()), z.transform(newtonMetres));

export const millimetresSchema = z.pipe(
  z.number().check(z.nonnegative()),
  z.transform(millimetres),
);

export const nameSchema = z.string().check(z.minLength(1));

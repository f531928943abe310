/** How measured times are summed up and said. */

import { quantile } from 'simple-statistics';

/** Median, 95th and 99th percentile in milliseconds. */
export function said(label: string, times: readonly number[]): string {
  const [p50, p95, p99] = [0.5, 0.95, 0.99].map((p) => quantile([...times], p).toPrecision(3));
  const count = String(times.length).padStart(5);
  return `${label.padEnd(46)}${count} ×  p50 ${p50} ms  p95 ${p95}  p99 ${p99}`;
}

export function medianOf(times: readonly number[]): number {
  return quantile([...times], 0.5);
}

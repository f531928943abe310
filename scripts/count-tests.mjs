/** Counts what passed and failed from the reports the test runners leave behind. */

import { readFileSync } from 'node:fs';

/** @typedef {{ passed: number, failed: number }} Count */

/**
 * A report that is missing or unreadable counts as nothing: the stage's own outcome then speaks.
 * @param {'vitest' | 'playwright'} runner
 * @param {string} file
 * @returns {Count}
 */
export function countIn(runner, file) {
  try {
    const report = JSON.parse(readFileSync(file, 'utf8'));
    return runner === 'vitest' ? countOfVitest(report) : countOfPlaywright(report);
  } catch {
    return { passed: 0, failed: 0 };
  }
}

/**
 * A file that could not be collected has no tests, and counts as one failure.
 * @param {{ numPassedTests: number, numFailedTests: number, testResults: { status: string, assertionResults: unknown[] }[] }} report
 */
function countOfVitest(report) {
  const broken = report.testResults.filter(
    ({ status, assertionResults }) => status === 'failed' && assertionResults.length === 0,
  );
  return { passed: report.numPassedTests, failed: report.numFailedTests + broken.length };
}

/** @param {{ stats: { expected: number, flaky: number, unexpected: number }, errors: unknown[] }} report */
function countOfPlaywright({ stats, errors }) {
  return { passed: stats.expected + stats.flaky, failed: stats.unexpected + errors.length };
}

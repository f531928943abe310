/** What is to be said of a wrench on the board: whether it may be used, and what stands in the way. */

import {
  classDeviation,
  OPERATIONS_BETWEEN_CALIBRATIONS,
  permissibleDeviation,
  readyWrench,
  type Wrench,
} from '../../engine/torque';
import { daysBetween, needsCalibration, type WrenchTool } from '../../state';
import { words } from '../../words';
import { boardWords } from '../../words/board-words';

export interface WrenchStanding {
  readonly isFit: boolean;
  readonly isRetired: boolean;
  /** The sentence that counts; the others explain it. */
  readonly first: string;
  readonly more: readonly string[];
}

export function standingOf(tool: WrenchTool, today: string): WrenchStanding {
  const { wrench, history = [] } = tool;
  const { condition, dueOn } = wrench;
  const ready = readyWrench(wrench, today);
  const isRetired = condition === 'retired';
  const isFit = ready.ok;
  if (!ready.ok && ready.refusal.code === 'wrench-not-in-service') {
    const changed = history.findLast((note) => note.kind === 'condition');
    const name = sentence(boardWords.toolBoard.conditionNames[condition]);
    const first =
      changed?.to === condition ? boardWords.toolBoard.since(name, words.date(changed.on)) : name;
    const more = !isRetired && needsCalibration(tool) ? [boardWords.toolBoard.untilCalibrated] : [];
    return { isFit, isRetired, first, more };
  }
  if (!ready.ok && ready.refusal.code === 'calibration-overdue') {
    const first =
      ready.refusal.because === 'date'
        ? boardWords.toolBoard.overdue(words.date(dueOn), daysBetween(dueOn, today))
        : boardWords.toolBoard.worn(OPERATIONS_BETWEEN_CALIBRATIONS);
    return { isFit, isRetired, first, more: [boardWords.toolBoard.untilCalibrated] };
  }
  const first = boardWords.toolBoard.dueIn(words.date(dueOn), daysBetween(today, dueOn));
  return { isFit, isRetired, first, more: [] };
}

export function rangeText({ lowest, highest, unit }: Wrench): string {
  const { figure } = words.writing;
  return lowest === highest
    ? `${figure(lowest, 2)} ${unit}`
    : words.torque.range(figure(lowest, 2), figure(highest, 2), unit);
}

export function toleranceText(wrench: Wrench): string {
  const percent = (fraction: number) => words.writing.figure(fraction * 100);
  return wrench.certificate === undefined
    ? boardWords.toolBoard.within(percent(classDeviation(wrench)))
    : boardWords.toolBoard.byCertificate(percent(permissibleDeviation(wrench)));
}

/**
 * The deviation as a number, the verdict on it where there is one, and what it does to a bolt. Signed as
 * (indicated − true) / true, after ISO 6789-1.
 */
export function deviationText(fraction: number, verdict?: string): string {
  const percent = percentText(fraction);
  const said = verdict === undefined ? percent : `${percent}, ${verdict}`;
  return percent === '0 %' ? said : `${said}: ${boardWords.toolBoard.boltsEnd(fraction)}`;
}

function percentText(fraction: number): string {
  const percent = words.writing.figure(Math.abs(fraction) * 100, 2);
  if (Number(percent) === 0) return '0 %';
  return `${fraction < 0 ? '−' : '+'}${percent} %`;
}

function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

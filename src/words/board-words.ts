/** Words of the tool board, apart from all others: its screens are opened long after the first one is shown. */

import { chanceText, reachBackLabels } from './en/reach-back';
import { calibrationLabels, toolBoard } from './en/tool-board';

export const boardWords = {
  toolBoard,
  calibration: calibrationLabels,
  reachBack: { ...reachBackLabels, chanceText },
} as const;

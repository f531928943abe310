/** words of the catalogue: a door of its own, so that nobody else waits for its sentences. */

import { apprenticeLabels, catalogueLabels } from './en/catalogue-labels';
import {
  type CatalogueNames,
  catalogueRefusal,
  catalogueRefusals,
  plainCatalogueNames,
} from './en/catalogue-refusals';
import { changeText } from './en/change-text';
import { answerName, bikeText, conditionText, questionName } from './en/conditions';

export const catalogueWords = {
  ...catalogueLabels,
  apprentice: apprenticeLabels,
  changeText,
  conditionText,
  questionName,
  answerName,
  bikeText,
  refusal: catalogueRefusal,
  refusals: catalogueRefusals,
} as const;

export { type CatalogueNames, plainCatalogueNames };

/** bike: the description of a bike, and the questions it answers. */

export {
  type Axle,
  assists,
  axles,
  type Bike,
  type BikeKind,
  type Brake,
  bars,
  bikeKinds,
  bikeSchema,
  brakes,
  crankFixings,
  discMounts,
  drives,
  type Extra,
  extras,
  forks,
  frameShapes,
  gearings,
  materials,
  pedalThreads,
  rotorFixings,
  saddleClamps,
  seatClamps,
  seatPosts,
  stems,
  tyreFits,
} from './bike.schema';
export { type BikeFacts, factsOf, questions } from './bike-facts';
export { gtinCheckDigit, isGtin } from './gtin';
export { type Place, places } from './places';

/** Which random stream of a trial feeds what. Numbers are part of the replay promise: never renumber, only append. */
export const STREAMS = {
  placement: 1,
  start: 2,
  systematic: 3,
  spread: 4,
  /** Readings, one after the other. */
  senses: 5,
  gyro: 6,
  corner: 7,
  /** Readings of a sensor that looks at a wall beside the robot, one after the other. */
  beside: 8,
  /** Not of a trial: seeds that a search draws for itself. */
  search: 90,
  /** Move i of the routine draws from stream `moves + i`: the same move gets the same luck in every routine. */
  moves: 1000,
} as const;

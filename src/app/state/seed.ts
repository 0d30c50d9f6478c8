/** Every trial of the app is a run of this seed: anyone can replay it by its number. */
export const SEED = 1;

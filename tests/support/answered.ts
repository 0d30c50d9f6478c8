/** Runs a generator that asks, giving it an answer to each question; what it returns. */
export function answered<Q, T, A>(asking: Generator<Q, T, A>, answer: (question: Q) => A): T {
  let step = asking.next();
  while (!step.done) step = asking.next(answer(step.value));
  return step.value;
}

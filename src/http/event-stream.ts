/**
 * An async iterator over `source` with each value passed through `each`. Unlike an async generator it ends at once when
 * the client leaves: `return` reaches the source even while the next value is still awaited.
 */
export function mapEvents<T, U>(
  source: AsyncIterable<T>,
  each: (value: T) => Promise<U>,
): AsyncGenerator<U, void, void> {
  const iterator = source[Symbol.asyncIterator]();
  const end = async () => {
    await iterator.return?.();
    return { value: undefined, done: true as const };
  };
  return {
    async next() {
      const step = await iterator.next();
      if (step.done === true) return { value: undefined, done: true };
      try {
        return { value: await each(step.value), done: false };
      } catch (error) {
        await end(); // whoever loops over us will not ask again, nor tell the source
        throw error;
      }
    },
    return: end,
    async throw(error: unknown) {
      await end();
      throw error;
    },
    async [Symbol.asyncDispose]() {
      await end();
    },
    [Symbol.asyncIterator]() {
      return this;
    },
  };
}

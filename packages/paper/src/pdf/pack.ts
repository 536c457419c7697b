/** What of a stream the writer of PDF keeps to itself. */
interface Stream {
  compress: boolean;
  buffer: readonly Uint8Array[];
  finalize: () => void;
}

/** A document that is about to write streams. */
interface Streaming {
  ref: (data: object) => unknown;
}

/**
 * Streams of a document packed by the deflate given. Node and browsers bring different ones of their own, and the same
 * pages shall give the same bytes everywhere.
 */
export function packWith(deflate: (bytes: Uint8Array) => Uint8Array, document: Streaming): void {
  const ref = document.ref.bind(document);
  document.ref = (data) => {
    const stream = ref(data) as Stream;
    const finalize = stream.finalize.bind(stream);
    stream.finalize = () => {
      if (stream.compress && stream.buffer.length > 0) {
        stream.buffer = [deflate(joined(stream.buffer))];
        stream.compress = false;
      }
      finalize();
    };
    return stream;
  };
}

function joined(pieces: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(pieces.reduce((sum, p) => sum + p.length, 0));
  let at = 0;
  for (const p of pieces) {
    whole.set(p, at);
    at += p.length;
  }
  return whole;
}

import { escapeXml } from '@tinwright/files/internal';
import fc from 'fast-check';
import { expect, test } from 'vitest';

// XML 1.0, section 2.2 (Char) and 2.4 (markup), from memory
test('the five signs with a meaning get their entities', () => {
  expect(escapeXml(`a<b>&"c"'d'`)).toBe('a&lt;b&gt;&amp;&quot;c&quot;&#39;d&#39;');
});

test('letters beyond ASCII stay, line breaks too', () => {
  expect(escapeXml('Kräuter 漢 🌱\n')).toBe('Kräuter 漢 🌱\n');
});

test('what XML has no place for is replaced: control characters, halves of pairs, U+FFFE', () => {
  expect(escapeXml('\u0000\u0008\u001b\ud800')).toBe('\ufffd'.repeat(4));
  expect(escapeXml('\udfff\ufffe')).toBe('\ufffd\ufffd');
});

test('any text holds no markup afterwards', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (text) => {
      const left = escapeXml(text).replace(/&(amp|lt|gt|quot|#39);/g, '');
      expect(left).not.toMatch(/[<>&"']/);
    }),
  );
});

// What is heard and felt of the line: every fryer has its own tone and count of beats, and calls until it is lifted.
const LOWEST_HZ = 392, EVERY_MS = 10_000, BEAT_S = 0.2, GAP_S = 0.12; // pitches small loudspeakers carry (own choice)
let sound = null;
const calls = new Map(); // number of a fryer that is due → how often it called, and when last
const warned = new Set();

export const heard = () => sound?.state === "running";

// A browser lets a page sound only after a touch.
export function unlock() {
  sound ??= new AudioContext();
  if (sound.state === "suspended") sound.resume();
}

function tone(hertz, loudness, at, seconds) {
  const source = sound.createOscillator(), loud = sound.createGain();
  source.frequency.value = hertz;
  loud.gain.value = loudness;
  source.connect(loud).connect(sound.destination);
  source.start(at);
  source.stop(at + seconds);
}

const pitch = (number) => LOWEST_HZ * 2 ** (((number - 1) % 8) / 6); // a whole tone from fryer to fryer

// As many beats as the fryer's number says, from the fifth on one long beat first; higher and louder with each call.
export function sing(number, step = 0, wait = 0) {
  if (!sound) return 0;
  const hertz = pitch(number) * 2 ** (Math.min(step, 7) / 12), loudness = Math.min(0.2 + 0.1 * step, 0.9);
  let at = sound.currentTime + wait;
  const begun = at;
  for (let beat = number > 4 ? -1 : 0; beat <= (number - 1) % 4; beat += 1) {
    const seconds = beat < 0 ? 3 * BEAT_S : BEAT_S;
    tone(hertz, loudness, at, seconds);
    at += seconds + GAP_S;
  }
  return at - begun;
}

// Two soft tones going up: this load is due in a quarter of a minute. Once for each load.
export function warn(number, load) {
  if (warned.has(load) || !sound) return;
  warned.add(load);
  tone(pitch(number), 0.15, sound.currentTime, BEAT_S);
  tone(pitch(number) * 1.25, 0.15, sound.currentTime + BEAT_S, BEAT_S);
}

// A phone shakes only after a touch, like the sound.
export function shake(pattern) {
  if (navigator.userActivation?.hasBeenActive) navigator.vibrate?.(pattern);
}

// Call for every fryer that is due, one after the other, so that none hides another.
export function call(due) {
  const now = performance.now();
  for (const number of calls.keys()) if (!due.includes(number)) calls.delete(number);
  let wait = 0;
  for (const number of due) {
    const last = calls.get(number) ?? { count: 0, at: -EVERY_MS };
    if (now - last.at < EVERY_MS) continue;
    calls.set(number, { count: last.count + 1, at: now });
    wait += (sing(number, last.count, wait) || 1) + GAP_S;
  }
  if (wait) shake(due.flatMap(() => [300, 100, 300, 200]));
}

// Whether the screen is kept on while it is looked at: the tablet decides, and only over a secure connection.
export async function stayAwake() {
  try {
    if (document.hidden || !navigator.wakeLock) return false;
    await navigator.wakeLock.request("screen");
    return true;
  } catch {
    return false;
  }
}

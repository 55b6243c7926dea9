// Photos on the phone: where they were taken, a small copy that goes first, and the tag that they show.
const SMALL = 1280; // px, the longer side of a small copy
const READ = 1200; // px, the longer side in which a tag is looked for

export function place() {
  // Position beside the photo: browsers take it out of the file. No answer within 3 s means none.
  return new Promise((done) => {
    if (!navigator.geolocation) return done({});
    navigator.geolocation.getCurrentPosition(
      ({ coords }) => done({ latitude: coords.latitude, longitude: coords.longitude, accuracy_m: coords.accuracy }),
      () => done({}), { timeout: 3000, maximumAge: 60000 });
  });
}

async function drawn(blob, longest) {
  // The picture on a canvas, upright as the camera meant it; null where this browser cannot show it.
  const whole = await createImageBitmap(blob, { imageOrientation: "from-image" }).catch(() => null);
  if (!whole) return null;
  const share = Math.min(1, longest / Math.max(whole.width, whole.height));
  const canvas = document.createElement("canvas");
  [canvas.width, canvas.height] = [Math.max(1, Math.round(whole.width * share)), Math.max(1, Math.round(whole.height * share))];
  canvas.getContext("2d", { willReadFrequently: true }).drawImage(whole, 0, 0, canvas.width, canvas.height);
  whole.close();
  return canvas;
}

export async function smallCopy(blob) {
  // The bytes of a JPEG, or null: then only the original goes.
  const canvas = await drawn(blob, SMALL);
  const made = canvas && (await new Promise((done) => canvas.toBlob(done, "image/jpeg", 0.8)));
  return made && made.size < blob.size ? made.arrayBuffer() : null;
}

export async function markOnTag(blob, job) {
  // The mark on a tag of this job that the photo shows, or null.
  const canvas = await drawn(blob, READ);
  if (!canvas) return null;
  const { decodeQR } = await import("./qr/decode.js");
  let read;
  try {
    read = decodeQR(canvas.getContext("2d").getImageData(0, 0, canvas.width, canvas.height));
  } catch {
    return null; // no tag in it
  }
  const ours = `duct-tag:1:${job}:`;
  if (!read.startsWith(ours) || read === ours) return null;
  try {
    return decodeURIComponent(read.slice(ours.length));
  } catch {
    return null; // percent signs that stand for nothing
  }
}

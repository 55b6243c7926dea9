// Speaking into the page: parts of a recording, kept as bytes the moment they come, with level and time.
const KINDS = ["audio/webm;codecs=opus", "audio/mp4", "audio/ogg;codecs=opus", "audio/webm"];
export const QUIET = 0.01; // a part whose loudest moment stays under this (of 1) holds hardly any sound

export function canRecord() {
  return !!(navigator.mediaDevices && navigator.mediaDevices.getUserMedia && window.MediaRecorder);
}

export class Recorder {
  // keep(bytes, kind): one second of sound came. ended(part): the part is whole. onLevel(level, seconds): to draw.
  constructor({ keep = async () => {}, ended, onLevel = () => {} }) {
    Object.assign(this, { keep, ended, onLevel, running: null });
  }

  async start() {
    const stream = await navigator.mediaDevices.getUserMedia({ audio: { echoCancellation: false, noiseSuppression: false, autoGainControl: true } });
    const kind = KINDS.find((one) => MediaRecorder.isTypeSupported(one)) || "";
    const recorder = new MediaRecorder(stream, kind ? { mimeType: kind } : undefined);
    const run = { stream, recorder, chunks: [], began: performance.now(), loudest: 0, writing: Promise.resolve() };
    run.whole = new Promise((done) => { run.done = done; });
    const context = new AudioContext();
    const ear = context.createAnalyser();
    ear.fftSize = 1024;
    context.createMediaStreamSource(stream).connect(ear);
    const wave = new Float32Array(ear.fftSize);
    run.context = context;
    recorder.ondataavailable = (event) => {
      if (!event.data.size) return;
      run.writing = run.writing.then(async () => {
        const bytes = await event.data.arrayBuffer();
        run.chunks.push(bytes);
        await this.keep(bytes, recorder.mimeType);
      });
    };
    recorder.onstop = async () => {
      await run.writing;
      stream.getTracks().forEach((track) => track.stop());
      context.close();
      if (this.running === run) this.running = null;
      const seconds = (performance.now() - run.began) / 1000;
      this.ended({ chunks: run.chunks, kind: recorder.mimeType, seconds, loudest: run.loudest, quiet: run.loudest < QUIET });
      run.done();
    };
    // A call, a lock or another app ends the track: what came so far is a part, and is kept.
    for (const event of ["ended", "mute"]) stream.getAudioTracks()[0].addEventListener(event, () => this.stop());
    recorder.start(1000);
    this.running = run;
    const draw = () => {
      if (this.running !== run) return;
      ear.getFloatTimeDomainData(wave);
      const level = Math.max(...wave.map(Math.abs));
      run.loudest = Math.max(run.loudest, level);
      this.onLevel(level, (performance.now() - run.began) / 1000);
      requestAnimationFrame(draw);
    };
    draw();
  }

  stop() {
    // Resolves when the part is whole and `ended` has been told.
    const run = this.running;
    if (!run) return Promise.resolve();
    if (run.recorder.state !== "inactive") run.recorder.stop();
    return run.whole;
  }
}

export function drawLevel(canvas, levels) {
  // The last levels as bars from the middle line; the shape, not the colour, tells that sound comes in.
  const pen = canvas.getContext("2d");
  const { width, height } = canvas;
  pen.clearRect(0, 0, width, height);
  pen.fillStyle = "#1b2733";
  const step = 6;
  levels.slice(-Math.floor(width / step)).forEach((level, at) => {
    const tall = Math.max(2, Math.min(1, level * 1.6) * height);
    pen.fillRect(at * step, (height - tall) / 2, step - 2, tall);
  });
}

export function minutes(seconds) {
  return `${Math.floor(seconds / 60)}:${String(Math.floor(seconds % 60)).padStart(2, "0")}`;
}

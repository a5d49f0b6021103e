// Draws a trace: one panel for each kind of quantity, one time axis and one cursor for all of them. Zooming fetches the
// samples of the part shown, so that every sample can be seen.
(() => {
  const picture = document.getElementById("trace-picture");
  if (!picture) {
    return;
  }
  const trouble = document.getElementById("trace-trouble");
  const ink = (name) => getComputedStyle(document.documentElement).getPropertyValue(name).trim();
  const dashes = [[], [8, 3], [2, 3], [8, 3, 2, 3], [14, 4], [4, 4]];
  const panelTitles = { pack: "pack", cells: "cells", current: "current, discharge positive", temperature: "temperature", residual: "residual, logged less model" };
  const segments = [...document.querySelectorAll("[data-segment]")].map((row) => ({
    kind: row.dataset.segment,
    from: Number(row.dataset.from),
    to: Number(row.dataset.to),
  }));
  const events = [...document.querySelectorAll("[data-event]")].map((item) => Number(item.dataset.event));
  const sync = uPlot.sync("trace");
  let charts = [];
  let whole = null;
  let shown = null;
  let asked = 0;

  const clock = (seconds) => {
    const sign = seconds < 0 ? "−" : "";
    const size = Math.abs(seconds);
    const hours = Math.floor(size / 3600);
    const minutes = Math.floor((size % 3600) / 60);
    const rest = size % 60;
    const tail = (Number.isInteger(rest) ? String(rest) : rest.toFixed(rest < 10 ? 2 : 1)).padStart(2, "0");
    return sign + (hours ? hours + ":" + String(minutes).padStart(2, "0") : minutes) + ":" + tail;
  };

  // Washes loads and marks events behind the lines.
  const backdrop = (chart) => {
    const { ctx, bbox } = chart;
    ctx.save();
    ctx.beginPath();
    ctx.rect(bbox.left, bbox.top, bbox.width, bbox.height);
    ctx.clip();
    for (const segment of segments) {
      if (segment.kind === "rest") {
        continue;
      }
      const left = chart.valToPos(segment.from, "x", true);
      const right = chart.valToPos(segment.to, "x", true);
      ctx.fillStyle = segment.kind === "run" ? ink("--hand-wash") : ink("--done-wash");
      ctx.fillRect(left, bbox.top, Math.max(1, right - left), bbox.height);
    }
    ctx.strokeStyle = ink("--hand");
    ctx.fillStyle = ink("--hand");
    for (const at of events) {
      const x = chart.valToPos(at, "x", true);
      ctx.beginPath();
      ctx.moveTo(x, bbox.top);
      ctx.lineTo(x, bbox.top + bbox.height);
      ctx.stroke();
      ctx.beginPath();
      ctx.moveTo(x - 5, bbox.top);
      ctx.lineTo(x + 5, bbox.top);
      ctx.lineTo(x, bbox.top + 8);
      ctx.fill();
    }
    ctx.restore();
  };

  const options = (panel, lines, last) => ({
    title: panelTitles[panel] + " [" + lines[0].unit + "]",
    width: picture.clientWidth,
    height: last ? 200 : 180,
    cursor: { sync: { key: sync.key, setSeries: false }, drag: { x: true, y: false, setScale: false } },
    scales: { x: { time: false } },
    legend: { live: true },
    axes: [
      { values: (chart, splits) => splits.map(clock), stroke: ink("--ink"), grid: { stroke: ink("--hair"), width: 1 } },
      { size: 60, stroke: ink("--ink"), grid: { stroke: ink("--hair"), width: 1 } },
    ],
    series: [
      { label: "at", value: (chart, value) => (value === null ? "—" : clock(value)) },
      ...lines.map((line, i) => ({
        label: line.name,
        stroke: ink(line.name === "model" ? "--hand" : "--ink"),
        width: line.name === "model" ? 1 : 1.3,
        dash: dashes[i % dashes.length],
        value: (chart, value) => (value === null ? "—" : value.toFixed(line.unit === "V" ? 3 : 2) + " " + line.unit),
      })),
    ],
    hooks: {
      drawClear: [backdrop],
      setSelect: [
        (chart) => {
          if (chart.select.width > 3) {
            const from = chart.posToVal(chart.select.left, "x");
            const to = chart.posToVal(chart.select.left + chart.select.width, "x");
            chart.setSelect({ left: 0, top: 0, width: 0, height: 0 }, false);
            show(from, to);
          }
        },
      ],
    },
  });

  const draw = (data) => {
    charts.forEach((chart) => chart.destroy());
    picture.replaceChildren();
    const panels = [...new Set(data.lines.map((line) => line.panel))];
    charts = panels.map((panel, i) => {
      const lines = data.lines.filter((line) => line.panel === panel);
      const chart = new uPlot(
        options(panel, lines, i === panels.length - 1),
        [data.seconds, ...lines.map((line) => line.values)],
        picture,
      );
      chart.over.addEventListener("dblclick", () => show(whole.from, whole.to));
      if (shown) {
        chart.setScale("x", { min: shown.from, max: shown.to });
      }
      sync.sub(chart);
      return chart;
    });
    picture.dataset.points = data.seconds.length;
  };

  const fetchLines = async (from, to) => {
    const query = from === undefined ? "" : "?from=" + from + "&to=" + to;
    const answer = await fetch(picture.dataset.lines + query);
    if (!answer.ok) {
      throw new Error("the samples of this trace cannot be had. Load the page again.");
    }
    return answer.json();
  };

  const tell = (error) => {
    trouble.textContent = error.message;
    trouble.hidden = false;
  };

  // The answer to an older question is not drawn over a newer one.
  const show = async (from, to) => {
    const left = Math.max(whole.from, Math.min(from, to));
    const right = Math.min(whole.to, Math.max(from, to));
    if (!(right > left)) {
      return;
    }
    asked += 1;
    const question = asked;
    try {
      const data = await fetchLines(left, right);
      if (question === asked) {
        shown = { from: left, to: right };
        picture.dataset.from = left;
        picture.dataset.to = right;
        draw(data);
      }
    } catch (error) {
      tell(error);
    }
  };

  const step = (way) => {
    const width = shown.to - shown.from;
    const moves = {
      in: [width / 4, -width / 4],
      out: [-width / 2, width / 2],
      left: [-width / 3, -width / 3],
      right: [width / 3, width / 3],
      whole: [whole.from - shown.from, whole.to - shown.to],
    };
    let [from, to] = [shown.from + moves[way][0], shown.to + moves[way][1]];
    if (way === "left" && from < whole.from) {
      [from, to] = [whole.from, whole.from + width];
    } else if (way === "right" && to > whole.to) {
      [from, to] = [whole.to - width, whole.to];
    }
    show(from, to);
  };

  const ways = { "+": "in", "=": "in", "-": "out", ArrowLeft: "left", ArrowRight: "right", 0: "whole" };
  picture.addEventListener("keydown", (event) => {
    if (whole && ways[event.key] && !event.ctrlKey && !event.metaKey && !event.altKey) {
      event.preventDefault();
      step(ways[event.key]);
    }
  });
  document.querySelectorAll("[data-zoom]").forEach((button) => {
    button.addEventListener("click", () => whole && step(button.dataset.zoom));
  });
  document.querySelectorAll("button.at").forEach((button) => {
    button.addEventListener("click", () => {
      if (whole) {
        show(Number(button.dataset.from), Number(button.dataset.to));
        picture.scrollIntoView({ block: "start" });
      }
    });
  });
  window.addEventListener("resize", () => {
    charts.forEach((chart) => chart.setSize({ width: picture.clientWidth, height: chart.height }));
  });

  fetchLines()
    .then((data) => {
      whole = { from: data.seconds[0], to: data.seconds[data.seconds.length - 1] };
      shown = { ...whole };
      draw(data);
    })
    .catch(tell);
})();

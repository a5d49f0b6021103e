// Moves the drawing of a linkage with the slider. Every microsecond was worked out before; nothing is computed here.
(() => {
  const section = document.getElementById("linkage");
  const slider = document.getElementById("pulse");
  if (!section || !slider) {
    return;
  }
  const rows = new Map(JSON.parse(section.dataset.table).map((row) => [row.p, row]));
  const reading = document.getElementById("reading-at");
  const joints = [...section.querySelectorAll(".joint")];
  const surface = document.getElementById("surface");
  const place = (part, names, values) => names.forEach((name, at) => part.setAttribute(name, values[at]));

  const drawRod = (joint, rod) => {
    const [line, arm, horn, armHole, hornHole] = joint.children;
    place(line, ["x1", "y1", "x2", "y2"], [rod.armX, rod.armY, rod.hornX, rod.hornY]);
    place(arm, ["x2", "y2"], [rod.armX, rod.armY]);
    place(horn, ["x2", "y2"], [rod.hornX, rod.hornY]);
    place(armHole, ["cx", "cy"], [rod.armX, rod.armY]);
    place(hornHole, ["cx", "cy"], [rod.hornX, rod.hornY]);
  };

  const draw = () => {
    const row = rows.get(Number(slider.value));
    if (!row) {
      return;
    }
    row.d.forEach((rod, at) => drawRod(joints[at], rod));
    place(surface, ["x2", "y2"], row.e);
    for (const cursor of section.querySelectorAll(".cursor")) {
      cursor.setAttribute("x1", row.x);
      cursor.setAttribute("x2", row.x);
    }
    reading.textContent = row.r;
    slider.setAttribute("aria-valuetext", row.r);
  };

  const step = (by) => {
    slider.value = String(Number(slider.value) + by);
    draw();
  };

  slider.addEventListener("input", draw);
  slider.addEventListener("keydown", (event) => {
    const ways = { ArrowLeft: -1, ArrowDown: -1, ArrowRight: 1, ArrowUp: 1, PageDown: -25, PageUp: 25 };
    const way = ways[event.key];
    if (way === undefined || event.ctrlKey || event.altKey || event.metaKey) {
      return;
    }
    event.preventDefault();
    step(event.shiftKey && Math.abs(way) === 1 ? 5 * way : way);
  });
  section.addEventListener("click", (event) => {
    const button = event.target.closest("button");
    if (button && button.dataset.step) {
      step(Number(button.dataset.step));
    } else if (button && button.dataset.to) {
      slider.value = button.dataset.to;
      draw();
    }
  });
  draw();
})();

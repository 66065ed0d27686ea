import { render } from "preact";
import { Panel } from "./panel";
import "./panel.css";
import { askScript } from "./script";

const place = document.getElementById("panel");
if (place) render(<Panel ask={askScript} />, place);

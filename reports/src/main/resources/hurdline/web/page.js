import {call, enter} from "./call.js";

const status = document.getElementById("status");
try {
  await enter();
  const files = await call("GET", "files");
  status.textContent = files.plants.length + " plants";
} catch (fault) {
  status.textContent = fault.message;
}

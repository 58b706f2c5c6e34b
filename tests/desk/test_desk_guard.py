"""Who may speak to the desk, by real requests; what it refuses, by name, size, origin and path."""

from __future__ import annotations

import http.client
import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

from tests.desk.conftest import PLATE, Running, httpx, running


def stranger(desk: Running, path: str, method: str = "GET", **headers: str) -> int:
    """The status of a request with exactly these headers."""
    asked = http.client.HTTPConnection("127.0.0.1", desk.port, timeout=30)
    asked.putrequest(method, path, skip_host=True, skip_accept_encoding=True)
    for name, value in headers.items():
        asked.putheader(name.replace("_", "-"), value)
    asked.endheaders()
    status = asked.getresponse().status
    asked.close()
    return status


def cookie(desk: Running) -> str:
    return "; ".join(f"{each.name}={each.value}" for each in desk.client.cookies.jar)


def host(desk: Running) -> str:
    return f"127.0.0.1:{desk.port}"


def test_without_the_key_nothing_is_told(desk: Running) -> None:
    for path in ("/", "/api/folder", "/own/desk.js", "/sheet/check?name=plate.nc", "/?key=wrong", "/nowhere"):
        assert stranger(desk, path, Host=host(desk)) == 403


def test_the_key_opens_once_and_is_not_kept_in_the_address(shop: Path) -> None:
    with running(shop) as own:
        first = own.client.get(own.address)  # the same browser, once more: it is known by its cookie
        assert first.status_code == 200
        assert "key=" not in str(first.url)
        with httpx.Client(trust_env=False) as other:
            assert other.get(own.address).status_code == 403
            assert other.get(own.root).status_code == 403


def test_the_cookie_is_named_by_the_port_and_goes_to_no_script_and_no_other_site(shop: Path) -> None:
    desk = Running(shop)
    try:
        with httpx.Client(trust_env=False) as client:
            told = client.get(desk.address)
        assert told.status_code == 303
        said = told.headers["set-cookie"]
        assert said.startswith(f"gclint-desk-{desk.port}=")
        assert "HttpOnly" in said
        assert "SameSite=Strict" in said
    finally:
        desk.end()


HOSTS = ["localhost:{port}", "127.0.0.1", "127.0.0.1:1", "evil.example:{port}", "[::1]:{port}"]


@pytest.mark.parametrize("name", HOSTS)
def test_under_another_host_name_everything_is_refused(desk: Running, name: str) -> None:
    assert stranger(desk, "/", Host=name.format(port=desk.port), Cookie=cookie(desk)) == 403


def test_two_host_names_are_refused(desk: Running) -> None:
    asked = http.client.HTTPConnection("127.0.0.1", desk.port, timeout=30)
    asked.putrequest("GET", "/", skip_host=True)
    for name in (host(desk), "evil.example"):
        asked.putheader("Host", name)
    asked.putheader("Cookie", cookie(desk))
    asked.endheaders()
    assert asked.getresponse().status in (400, 403)
    asked.close()


@pytest.mark.parametrize("origin", ["http://evil.example", "null", "http://127.0.0.1:1", "https://127.0.0.1:{port}"])
def test_from_another_origin_everything_is_refused(desk: Running, origin: str) -> None:
    own = {"Host": host(desk), "Cookie": cookie(desk), "Origin": origin.format(port=desk.port)}
    assert stranger(desk, "/api/folder", **own) == 403
    assert stranger(desk, "/api/save", "POST", **own, X_Desk_Token=desk.token) == 403


def test_a_request_that_another_site_starts_is_refused(desk: Running) -> None:
    own = {"Host": host(desk), "Cookie": cookie(desk)}
    assert stranger(desk, "/", **own, Sec_Fetch_Site="cross-site") == 403
    assert stranger(desk, "/", **own, Sec_Fetch_Site="same-origin") == 200


def test_a_change_needs_the_token_and_the_origin(desk: Running) -> None:
    given = {"name": "plate.nc", "which": "job", "seen": "", "changes": []}
    origin = {"origin": desk.root}
    assert desk.client.post("/api/save", json=given, headers=origin).status_code == 403
    assert desk.client.post("/api/save", json=given, headers={**origin, "x-desk-token": "0" * 43}).status_code == 403
    assert desk.client.post("/api/save", json=given, headers={"x-desk-token": desk.token}).status_code == 403
    assert not (desk_folder(desk) / "job.toml").exists()
    assert desk.client.delete("/", headers=desk.headers).status_code == 405


def desk_folder(desk: Running) -> Path:
    page = desk.client.get("/").text
    return Path(page.partition('title="The folder that is open">')[2].partition("<")[0])


def test_no_page_is_framed_referred_from_or_fetches_from_elsewhere(desk: Running) -> None:
    for path, framing in (("/", "'none'"), ("/sheet/check?name=plate.nc", "'self'"), ("/api/folder", "'none'")):
        told = desk.client.get(path)
        policy = told.headers["content-security-policy"]
        assert told.status_code == 200
        assert told.headers["referrer-policy"] == "no-referrer"
        assert "default-src 'none'" in policy
        assert f"frame-ancestors {framing}" in policy
        assert "http" not in policy


NAMES = [
    "../secret.nc", "..%2fsecret.nc", "/etc/passwd", "jobs/../../secret.nc", "..\\secret.nc",
    "plate.nc/../../secret.nc", "\0", ".hidden.nc", "a" * 3000, "C:\\plate.nc", "//etc/passwd", "....//secret.nc",
]  # fmt: skip


@pytest.mark.parametrize("name", NAMES)
def test_no_path_leads_out_of_the_folder(desk: Running, name: str) -> None:
    for path in ("/api/program", "/api/row", "/api/state", "/sheet/check"):
        told = desk.client.get(path, params={"name": name})
        assert told.status_code in (403, 404)
        assert "slip" not in told.text
    told = desk.post("/api/mend", name=name, write=True)
    assert told.status_code in (403, 404)
    assert desk.save(name, "job", (["material"], "beech"), seen="").status_code in (403, 404)


@pytest.mark.skipif(os.name == "nt", reason="links need rights there")
def test_links_out_of_the_folder_are_not_followed(shop: Path, desk: Running) -> None:
    (shop / "out.nc").symlink_to(shop.parent / "secret.nc")
    (shop / "up").symlink_to(shop.parent)
    assert desk.get("/api/program", name="out.nc").status_code == 403
    assert desk.get("/api/program", name="up/secret.nc").status_code == 403
    listed = desk.get("/api/folder").json()
    assert listed["programs"] == ["plate.nc"]
    assert len(listed["left"]) == 2
    for link in ("out.nc", "up"):
        (shop / link).unlink()


def test_a_drop_overwrites_nothing(shop: Path, desk: Running) -> None:
    before = (shop / "plate.nc").read_bytes()
    assert desk.drop("plate.nc", before).json() == {"name": "plate.nc", "renamed": False}
    told = desk.drop("plate.nc", PLATE.replace("X60", "X61").encode()).json()
    assert told == {"name": "plate-2.nc", "renamed": True}
    assert (shop / "plate.nc").read_bytes() == before
    (shop / "plate-2.nc").unlink()


@pytest.mark.parametrize(
    "name",
    ["", "../plate.nc", "a/b.nc", "shop.toml", "x.html", ".x.nc", "con.nc", "a\nb.nc", "a:b.nc", "x" * 200 + ".nc"],
)
def test_a_drop_has_the_name_of_a_program(shop: Path, desk: Running, name: str) -> None:
    before = sorted(each.name for each in shop.iterdir())
    assert desk.drop(name, PLATE.encode()).status_code == 422
    assert sorted(each.name for each in shop.iterdir()) == before


def test_what_is_too_large_is_refused(shop: Path, desk: Running) -> None:
    assert desk.drop("big.nc", b" " * 64_000_001).status_code == 413
    told = desk.post("/api/save", name="plate.nc", which="job", seen="", changes=[], more="x" * 1_000_001)
    assert told.status_code == 413
    assert not (shop / "big.nc").exists()
    assert desk.get("/api/folder").status_code == 200


@pytest.mark.parametrize("sent", [b"", b"[]", b"{", b'{"name": 1}', b'{"name": "plate.nc", "which": "other"}', b"\xff"])
def test_what_is_no_request_of_the_page_is_told_so(desk: Running, sent: bytes) -> None:
    told = desk.client.post("/api/save", content=sent, headers=desk.headers | {"content-type": "application/json"})
    assert told.status_code == 400
    assert "Traceback" not in told.text


def test_what_is_no_program_is_an_answer(shop: Path, desk: Running) -> None:
    (shop / "note.nc").write_bytes(bytes(range(256)) * 40)
    told = desk.get("/api/program", name="note.nc")
    assert told.status_code in (200, 422)
    assert desk.get("/sheet/check", name="note.nc").status_code in (200, 422)
    (shop / "note.nc").unlink()


def test_a_killed_worker_is_an_answer_and_is_replaced(shop: Path) -> None:
    from gclint.desk.pool import Failed, Pool

    pool = Pool(shop.resolve(), 1)
    try:
        assert pool.do("listing", 60)["programs"]
        pool.idle[0].process.kill()
        pool.idle[0].process.wait()
        assert pool.do("listing", 60)["programs"]
        with pytest.raises(Failed) as late:
            pool.do("checked", 0.0, name="plate.nc", reader="author", whole=True)
        assert late.value.kind == "Late"
        assert pool.do("listing", 60)["programs"]
    finally:
        pool.end()
    assert not pool.idle


def test_it_ends_with_ctrl_c(shop: Path) -> None:
    desk = Running(shop)
    desk.enter()
    assert desk.client.get("/api/folder").status_code == 200
    assert desk.end() == 0


def test_bad_options_are_one_sentence(tmp_path: Path, desk: Running) -> None:
    for given, says in (([str(tmp_path / "none")], "no such folder"), ([str(tmp_path), "--port", "80"], "1024"),
                        ([str(tmp_path), "--port", str(desk.port)], "cannot be used")):  # fmt: skip
        done = subprocess.run(
            [sys.executable, "-m", "gclint", "desk", *given, "--no-browser"], capture_output=True, text=True, timeout=60
        )
        assert done.returncode == 2
        assert done.stdout == ""
        assert says in done.stderr
        assert done.stderr.count("\n") == 1


def test_answers_are_json(desk: Running) -> None:
    assert json.loads(desk.get("/api/row", name="plate.nc").text)["name"] == "plate.nc"

"""Opens an invented shop and posts receipts, for .ci/measure-forced-writes: PORT, how many, the file with the calls."""

import concurrent.futures
import http.cookiejar
import re
import sys
import time
import urllib.error
import urllib.parse
import urllib.request
import uuid

PASSWORD = "four gulls over wet slate"


class Stay(urllib.request.HTTPRedirectHandler):
    def redirect_request(self, *ignored):
        return None


class Person:
    def __init__(self, port):
        self.home = f"http://localhost:{port}/"
        cookies = urllib.request.HTTPCookieProcessor(http.cookiejar.CookieJar())
        self.client = urllib.request.build_opener(cookies, Stay)

    def ask(self, path, body=None):
        try:
            with self.client.open(self.home + path, body, timeout=60) as answer:
                return answer.status, answer.read().decode()
        except urllib.error.HTTPError as other:
            return other.code, other.read().decode()

    def fill(self, page, target, answers):
        token = re.search(r'name="_csrf"[^>]*value="([^"]+)"', self.ask(page)[1]).group(1)
        status, body = self.ask(target, urllib.parse.urlencode({**answers, "_csrf": token}).encode())
        if status not in (302, 303):
            raise SystemExit(f"{target} answered {status}: {body}")

    def sign_in(self):
        self.fill("sign-in", "sign-in", {"name": "Robin", "password": PASSWORD})

    def buy(self, number):
        self.fill("receipts/new", "receipts", {
            "id": str(uuid.uuid4()), "day": "OTHER", "date": "2025-03-01", "lines[0].kind": "PIECES",
            "lines[0].title": f"Tin box {number}", "lines[0].price": "4.25", "lines[0].quantity": "1",
            "tillTotal": "4.25", "paidWith": "OWNER", "action": "save"})


def calls(file):
    with open(file) as lines:
        return sum(1 for line in lines if "(" in line and "= 0" in line)


def main(port, many, file):
    owner = Person(port)
    owner.fill("setup", "setup", {
        "code": "TEST-2345", "ownerName": "Robin", "password": PASSWORD, "shopName": "Linden Lane Bench",
        "currency": "USD", "taxTable": "plain", "costingMethod": "FIFO", "firstDay": "2025-01-01", "timeZone": "UTC",
        "next": "later"})
    owner.sign_in()
    people = [Person(port) for _ in range(8)]
    for person in people:
        person.sign_in()
    for number in range(10):
        owner.buy(number)
    reading = calls(file)
    for _ in range(many):
        owner.ask("receipts/new")
    print(f"{many} pages read: {calls(file) - reading} forced writes")
    before, begin = calls(file), time.monotonic()
    for number in range(many):
        owner.buy(number)
    took = time.monotonic() - begin
    print(f"{many} receipts one after another: {calls(file) - before} forced writes, {1000 * took / many:.0f} ms each")
    before, begin = calls(file), time.monotonic()
    with concurrent.futures.ThreadPoolExecutor(8) as room:
        list(room.map(lambda number: people[number % 8].buy(number), range(many)))
    took = time.monotonic() - begin
    print(f"{many} receipts of eight people at once: {calls(file) - before} forced writes, {1000 * took / many:.0f} ms each")


if __name__ == "__main__":
    main(int(sys.argv[1]), int(sys.argv[2]), sys.argv[3])
